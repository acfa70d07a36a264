import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { learnedMixingWork, type MixerWork } from './learned-mixing-work.ts'
import { type LearnedOven, learnedOvens } from './learned-ovens.ts'
import { learnedPanels, type Panel } from './learned-spread.ts'

/** Everything the notebook has learned of a kitchen. */
export interface Learned {
  work: MixerWork[]
  panels: Panel[]
  ovens: LearnedOven[]
}

/** What the trials of a notebook teach of its kitchen; trials that keep their codes teach nothing yet. */
export function learnedOf(trials: readonly WholeTrial[]): Learned {
  return {
    work: learnedMixingWork(trials),
    panels: learnedPanels(trials),
    ovens: learnedOvens(trials),
  }
}
