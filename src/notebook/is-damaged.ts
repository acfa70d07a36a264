import { NotebookFailure } from './notebook-failure.ts'

/** True for the failure of a record that is stored and does not fit its shape. */
export function isDamaged(failure: unknown): boolean {
  return failure instanceof NotebookFailure && failure.reason === 'damaged'
}
