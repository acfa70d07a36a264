import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { lettersOf } from '@/core/report/letters-of.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'

/** What findings are about besides their scores: a trial with its log, or a table from elsewhere that has none. */
export interface FindingsSource {
  whole: WholeTrial | null
  /** Where draws start from. */
  seed: number
  /** Letters of the levels by id, where every session dealt the same. */
  letters: ReadonlyMap<string, string>
  /** All of them, with what the design can detect: worked out when they are asked for, since that takes its time. */
  fairness: () => readonly FairnessItem[]
  nameOf: (taster: string) => string
}

/** A trial as findings speak of it: where its draws start from, the letters of its levels, its fairness items, its tasters by name. */
export function sourceOfTrial(whole: WholeTrial): FindingsSource {
  return {
    whole,
    seed: whole.trial.seed,
    letters: lettersOf(whole),
    fairness: onceAsked(() => fairnessOfTrial(whole)),
    nameOf: (tasterId) => tasterName(tasterId, whole.kitchen),
  }
}

function onceAsked<Answer>(work: () => Answer): () => Answer {
  let known: { answer: Answer } | null = null
  return () => {
    known ??= { answer: work() }
    return known.answer
  }
}

/** A table has no seed of its own: every one starts from 1, as on the command line. */
export const sourceOfTable: FindingsSource = {
  whole: null,
  seed: 1,
  letters: new Map(),
  fairness: () => [],
  nameOf: (taster) => taster,
}
