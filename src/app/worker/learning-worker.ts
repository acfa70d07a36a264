import * as Comlink from 'comlink'
import { type Learned, learnedOf } from '@/core/learned/learned.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

const service = {
  /** What the trials teach of the kitchen. */
  learn(trials: WholeTrial[]): Learned {
    return learnedOf(trials)
  },
}

export type LearningService = typeof service

Comlink.expose(service)
