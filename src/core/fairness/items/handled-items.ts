import type { FairnessItem, LevelAmount } from '@/core/fairness/fairness-item.ts'
import type { LoggedSession } from '@/core/fairness/logged-sessions.ts'
import { begunBy } from '@/core/session/bake-entry.ts'
import { doughsInWork, piecesOfBatch } from '@/core/session/line.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { workedIn } from '@/core/session/weights-of-batch.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { workedInSession } from '@/core/whole-trial/worked-in-session.ts'
import { meanOf, meansByLevel } from './ends-of.ts'
import { madeItem } from './made-item.ts'
import { smallestGap } from './smallest-gap.ts'
import { spreadOf } from './warmth-items.ts'

/** What handling did: levels moved by weights and by what was worked in, folds given unequally, and departures by kind. */
export function handledItems(logged: readonly LoggedSession[], whole: WholeTrial): FairnessItem[] {
  return [...levelItem(logged, whole), ...foldItems(logged), ...departedItem(logged, whole)]
}

function levelItem(logged: readonly LoggedSession[], whole: WholeTrial): FairnessItem[] {
  const plan = logged.at(-1)?.plan
  const gap = plan ? smallestGap(plan) : null
  if (gap === null) return []
  const rows = logged.flatMap(({ session, effective }) =>
    workedInSession(whole, session).flatMap((worked) => {
      const { levelId, planned, handled, batchId } = worked
      if (levelId === null || planned === null || handled === null) return []
      const ids = [batchId, ...piecesOfBatch(session, batchId).map(({ id }) => id)]
      const { dustingFlourGrams } = workedIn(effective, ids)
      return [{ levelId, planned, value: handled, dustingFlourGrams }]
    }),
  )
  const perLevel = meansByLevel(rows)
  const moved = perLevel.map(({ levelId, value }) => {
    const own = rows.filter((row) => row.levelId === levelId)
    const planned = meanOf(own.map((row) => row.planned))
    const dustingGrams = meanOf(own.map((row) => row.dustingFlourGrams))
    return { levelId, planned, handled: value, gap, dustingGrams }
  })
  const off = (one: { planned: number; handled: number }) => Math.abs(one.handled - one.planned)
  const [worst] = moved.toSorted((a, b) => off(b) - off(a))
  if (!worst) return []
  return [
    madeItem('levels-handled', {
      ...{ size: off(worst) / gap, data: worst, perLevel, when: 'after', path: '/levels' },
      remedies: [{ code: 'oil-or-water-on-bench' }],
    }),
  ]
}

/** Repeated steps that some level got more often than another although the plan gives them alike. */
function foldItems(logged: readonly LoggedSession[]): FairnessItem[] {
  const plan = logged.at(-1)?.plan
  if (!plan || plan.factor.acts.on === 'fold-count') return []
  const begun = logged.map(begunOnDoughs)
  return plan.steps.flatMap((step, at): FairnessItem[] => {
    const rows = begun.flatMap((one) => timesDone(one, step.id))
    const spread = spreadOf(rows)
    if (!spread || spread.high === spread.low) return []
    const { perLevel, low, high } = spread
    const data = { stepId: step.id, kind: step.kind, low, high }
    const repeats = Math.max(1, Math.round(high))
    return [
      madeItem('folds-done', {
        ...{ size: high - low, data, perLevel, subject: step.id, when: 'after' },
        ...{ remedies: [{ code: 'equal-folds', stepId: step.id, repeats }] },
        path: `/steps/${at}/repeats`,
      }),
    ]
  })
}

/** What was begun on a dough or its pieces, in the plan its session ran. */
interface BegunOnDough {
  plan: Plan
  batchId: string
  levelId: string
  begun: readonly { unitId: string; stepId: string }[]
}

function begunOnDoughs({ session, plan, effective }: LoggedSession): BegunOnDough[] {
  const started = effective.flatMap((event) => {
    const step = begunBy(event, plan)
    return step ? [{ unitId: event.about.id, stepId: step.stepId }] : []
  })
  return doughsInWork(session).flatMap(({ id: batchId, levelId }) => {
    const own = new Set([batchId, ...piecesOfBatch(session, batchId).map((piece) => piece.id)])
    const begun = started.filter(({ unitId }) => own.has(unitId))
    return levelId === null ? [] : [{ plan, batchId, levelId, begun }]
  })
}

/** How often a step was begun on each dough that has gone on to a later step: one still at it is not judged. */
function timesDone(doughs: readonly BegunOnDough[], stepId: string): LevelAmount[] {
  return doughs.flatMap(({ plan, batchId, levelId, begun }) => {
    const at = plan.steps.findIndex(({ id }) => id === stepId)
    const later = new Set(plan.steps.slice(at + 1).map(({ id }) => id))
    const value = begun.filter(
      (event) => event.stepId === stepId && event.unitId === batchId,
    ).length
    const gone = begun.some((event) => later.has(event.stepId))
    return gone && value > 0 ? [{ levelId, value }] : []
  })
}

function departedItem(logged: readonly LoggedSession[], whole: WholeTrial): FairnessItem[] {
  const all = logged.flatMap(({ session }) => departedInSession(whole, session))
  if (all.length === 0) return []
  const count = (...what: string[]) => all.filter((one) => what.includes(one.what)).length
  const data = {
    order: count('dough-order', 'bake-order'),
    wait: count('wait'),
    weight: count('weight'),
    steps: count('step-missing', 'step-extra'),
  }
  return [madeItem('departed', { size: all.length, data, when: 'after', path: '' })]
}

/** Pieces whose cooling was cut short by more than its tolerance. */
export function coolingItems(logged: readonly LoggedSession[]): FairnessItem[] {
  const short = logged.flatMap(({ session, plan, effective }) =>
    stepRuns(session, plan, effective).flatMap(({ step, startedAt, stoppedAt }) => {
      if (step.kind !== 'cool' || startedAt === null || stoppedAt === null) return []
      const seconds = (stoppedAt - startedAt) / 1000
      const missing = step.waitSeconds - seconds
      return missing > step.earlySeconds ? [{ seconds, planned: step.waitSeconds }] : []
    }),
  )
  const [worst] = short.toSorted((a, b) => a.seconds / a.planned - b.seconds / b.planned)
  if (!worst) return []
  const data = {
    plannedSeconds: worst.planned,
    shortestSeconds: worst.seconds,
    pieces: short.length,
  }
  const size = (1 - worst.seconds / worst.planned) * 100
  const remedies = [{ code: 'cool-longer' as const }]
  return [madeItem('cut-warm', { size, data, remedies, when: 'after', path: '' })]
}
