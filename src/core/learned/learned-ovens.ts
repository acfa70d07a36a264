import { heatsDiffer } from '@/core/clock-plan/oven-heat.ts'
import { thresholds } from '@/core/fairness/thresholds.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { type FloorAfterPull, floorsAfterPulls } from './floor-after-pull.ts'

/** How soon an oven was as hot again after a load, by the floor readings of the trials that name it. */
export type LearnedOven = {
  ovenId: string
  trialIds: string[]
  /** Pulls after which the floor was read while the oven stood empty. */
  pulls: number
} & (
  | { ok: true; recoverySeconds: number }
  /** Too few pulls; or after most of them it was read while it was still colder, which says how long it takes at the least. */
  | { ok: false; reason: 'few-pulls' | 'still-colder'; atLeastSeconds: number | null }
)

/** Fewest pulls that replace what is a stated default. Common practice, no source. */
const fewestPulls = 3
const roundSeconds = 30

/**
 * How long each oven takes until its floor reads again what the first launch went in at, less the size that the fairness check
 * calls worth knowing: the median over all pulls after which the floor was read, up to whole half minutes. Left out are trials
 * that keep their codes, that name no oven or several, and whose levels want it at different temperatures.
 */
export function learnedOvens(trials: readonly WholeTrial[]): LearnedOven[] {
  const found = trials.flatMap(floorsOfTrial)
  const ovenIds = [...new Set(found.map(({ ovenId }) => ovenId))]
  return ovenIds.map((ovenId) => {
    const own = found.filter((one) => one.ovenId === ovenId)
    const trialIds = [...new Set(own.map(({ trialId }) => trialId))]
    return { ovenId, trialIds, ...recoveryOf(own) }
  })
}

interface FloorOfOven extends FloorAfterPull {
  ovenId: string
  trialId: string
}

function floorsOfTrial(whole: WholeTrial): FloorOfOven[] {
  if (sealed(whole)) return []
  return whole.sessions.flatMap((session) => {
    const plan = planOfSession(whole, session)
    const ovens = whole.kitchen.filter(
      ({ id, kind }) => kind === 'oven' && plan.kitchenIds.includes(id),
    )
    const [oven] = ovens
    if (!oven || ovens.length > 1 || heatsDiffer(plan)) return []
    const events = eventsOfSession(whole.events, session.id)
    const within = thresholds['oven-floor'].know ?? 0
    return floorsAfterPulls(events, within).map((floor) => ({
      ...floor,
      ovenId: oven.id,
      trialId: whole.trial.id,
    }))
  })
}

/** The middle pull, the later one of two; one that was read while it was colder counts as longer than all. */
function recoveryOf(floors: readonly FloorAfterPull[]) {
  const pulls = floors.length
  const seconds = floors
    .map(({ hotAgainSeconds }) => hotAgainSeconds ?? Number.POSITIVE_INFINITY)
    .toSorted((one, other) => one - other)
  const colder = floors.flatMap(({ colderAtSeconds }) => colderAtSeconds ?? [])
  const atLeastSeconds = colder.length > 0 ? Math.max(...colder) : null
  if (pulls < fewestPulls) return { pulls, ok: false, reason: 'few-pulls', atLeastSeconds } as const
  const middle = seconds[Math.floor(pulls / 2)] ?? Number.POSITIVE_INFINITY
  if (middle === Number.POSITIVE_INFINITY)
    return { pulls, ok: false, reason: 'still-colder', atLeastSeconds } as const
  const recoverySeconds = Math.ceil(Math.round(middle) / roundSeconds) * roundSeconds
  return { pulls, ok: true, recoverySeconds } as const
}
