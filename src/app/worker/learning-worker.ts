import * as Comlink from 'comlink'
import { type Learned, learnedOf } from '@/core/learned/learned.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

let taken: WholeTrial[] = []

const service = {
  /** Begins anew, with none. */
  forget(): void {
    taken = []
  },
  /** One trial more to learn from: each comes by itself, since handing over all of them would hold up a frame. */
  take(whole: WholeTrial): void {
    taken.push(whole)
  },
  /** What the trials taken since the last `forget` teach of the kitchen. */
  learn(): Learned {
    return learnedOf(taken)
  },
}

export type LearningService = typeof service

Comlink.expose(service)
