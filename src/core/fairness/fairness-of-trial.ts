import type { Spread } from '@/core/design/spread.ts'
import type { LearnedWork } from '@/core/dough-temperature/learn-mixing-work.ts'
import { conductItems } from '@/core/fairness/items/conduct-items.ts'
import { evidenceItems } from '@/core/fairness/items/evidence-items.ts'
import { failureItems } from '@/core/fairness/items/failure-items.ts'
import { fermentItems } from '@/core/fairness/items/ferment-items.ts'
import { coolingItems, handledItems } from '@/core/fairness/items/handled-items.ts'
import { loggedAgeItems } from '@/core/fairness/items/logged-age-items.ts'
import { warmthItems } from '@/core/fairness/items/warmth-items.ts'
import { keptAnswer } from '@/core/record/kept-answer.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { FairnessCode } from './fairness-data.ts'
import type { FairnessItem } from './fairness-item.ts'
import { conductOfPlan } from './fairness-of-plan.ts'
import { inTurn, toMend } from './in-turn.ts'
import { loggedSessions } from './logged-sessions.ts'

/** What the log shows of a rider that the plan could only foresee. */
const shownByLog: Partial<Record<FairnessCode, FairnessCode>> = {
  'water-temperature': 'dough-warmth',
  'age-at-baking': 'age-baked',
  'oven-to-mouth': 'mouth-minutes',
  'age-at-tasting': 'age-tasted',
  'piece-before': 'piece-before-done',
}

/**
 * The fairness check of a trial: that of its plan in force, and what the log of its sessions shows of the same and of what
 * only happens on the day. Where the log shows a rider, what was foreseen of it is to be known at most: what happened counts. Names levels beside orders and failures: callers keep it back while a session is sealed.
 */
export function fairnessOfTrial(
  whole: WholeTrial,
  learned: LearnedWork | null = null,
  spread: Spread | null = null,
): FairnessItem[] {
  return withLog(whole, [
    ...conductOfTrial(whole, learned),
    ...evidenceItems(planInForce(whole), spread),
  ])
}

/** How many items of that check are left to fix, as `toMend` counts them: without what the design can detect. */
export function toMendInTrial(whole: WholeTrial): number {
  return toMend(withLog(whole, conductOfTrial(whole, null)))
}

const conductOfTrial = keptAnswer((whole: WholeTrial, learned: LearnedWork | null) => {
  const { kitchen, sessions, trial } = whole
  const circumstances = { kitchen, trialSeed: trial.seed, sessions, learned }
  return conductOfPlan(planInForce(whole), circumstances)
})

/** What was foreseen beside what the log shows, in turn. */
function withLog(whole: WholeTrial, planned: readonly FairnessItem[]): FairnessItem[] {
  const { accepted } = planInForce(whole)
  const logged = loggedItems(whole)
  const shown = new Set(logged.map(({ code }) => code))
  const foreseen = inTurn(planned, accepted).map((item): FairnessItem => {
    const actual = shownByLog[item.code]
    return actual && shown.has(actual) && item.severity === 'fix'
      ? { ...item, severity: 'know' }
      : item
  })
  return inTurn([...foreseen, ...logged], accepted)
}

/** What the log alone shows; empty before the first session. */
export function loggedItems(whole: WholeTrial): FairnessItem[] {
  return ofLog(whole, null)
}

const ofLog = keptAnswer((whole: WholeTrial, _: null): FairnessItem[] => {
  const logged = loggedSessions(whole)
  return [
    ...warmthItems(logged),
    ...fermentItems(logged),
    ...loggedAgeItems(logged, whole.ballots),
    ...handledItems(logged, whole),
    ...failureItems(logged),
    ...coolingItems(logged),
    ...conductItems(whole, logged),
  ]
})
