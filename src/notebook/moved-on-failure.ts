import type { MovedOn } from '@/core/session/press/moved-on.ts'
import { NotebookFailure } from './notebook-failure.ts'

/** A press that the log has moved on from: nothing of it is stored, and what stands against it is told. */
export class MovedOnFailure extends NotebookFailure {
  readonly movedOn: MovedOn

  constructor(movedOn: MovedOn) {
    super('moved-on', movedOn.why)
    this.movedOn = movedOn
  }
}
