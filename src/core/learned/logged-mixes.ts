import { restInMixSeconds } from '@/core/dough-temperature/autolyse-of-plan.ts'
import { mixBodies } from '@/core/dough-temperature/heat-part.ts'
import type { LoggedMix } from '@/core/dough-temperature/learn-mixing-work.ts'
import { mixingHeats } from '@/core/dough-temperature/mixing-heat.ts'
import { mixerOfPlan, mixingWayOf } from '@/core/dough-temperature/mixing-work.ts'
import { bowlOf, doughGramsOf } from '@/core/dough-temperature/planned-mixes.ts'
import { beforeRest, restShare } from '@/core/dough-temperature/rested.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { moistureIn } from '@/core/kitchen/flour-moisture.ts'
import type { Mixer } from '@/core/kitchen/kitchen-record.ts'
import type { MixingWay } from '@/core/kitchen/mixing-way.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { weightsOfBatch } from '@/core/session/weights-of-batch.ts'
import { sheetOfBatch } from '@/core/session/worked-levels.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { formulaAsWeighed } from './formula-as-weighed.ts'
import { type MixReading, type MixReadingTrouble, mixReading } from './mix-reading.ts'

/** How a dough was mixed: by a mixer of the kitchen, by a machine that no entry names, or by hand. */
export type MixedBy = ({ by: 'mixer'; mixerId: string } | { by: 'machine' } | { by: 'hand' }) & {
  way: MixingWay
}

/** Why a dough tells nothing of the mixing work. */
export type UntoldReason =
  | MixReadingTrouble
  | 'no-temperatures'
  | 'water-not-read'
  | 'cannot-be-weighed'

/** The scale that a trial's levels stand on: `key` agrees where two trials' levels do. */
export interface FactorScale {
  key: string
  name: string
  unitOfMeasure: string
}

export type TrialMix = { trialId: string; mixedBy: MixedBy } & (
  | { ok: true; factor: FactorScale; mix: LoggedMix }
  | { ok: false; reason: UntoldReason }
)

/**
 * Every dough of a trial as a logged mix for the mixing work: weights as weighed, temperatures as read, those of flour,
 * preferment and room else as planned, the mixer's bowl at the room's. None while the trial keeps its codes.
 */
export function loggedMixes(whole: WholeTrial): TrialMix[] {
  if (sealed(whole)) return []
  return toldTrial(whole).sessions.flatMap((session) => mixesOfSession(whole, session))
}

/** How a plan's doughs are mixed. */
export function mixedByOf(plan: Plan, kitchen: WholeTrial['kitchen']): MixedBy {
  const mixer = mixerOfPlan(plan, kitchen)
  const way = mixingWayOf(plan, mixer)
  if (mixer) return { by: 'mixer', mixerId: mixer.id, way }
  return { by: way === 'hand' || way === 'bench' ? 'hand' : 'machine', way }
}

/** A plan's scale: the kind of factor and its unit must agree, for free kinds the name as well. */
export function factorScale({ factor }: Pick<Plan, 'factor'>): FactorScale {
  const { acts, name, unitOfMeasure } = factor
  const free = acts.on === 'own' || acts.on === 'ingredient' || acts.on === 'flour-share'
  const key = `${acts.on}/${unitOfMeasure}/${free ? name.trim().toLowerCase() : ''}`
  return { key, name, unitOfMeasure }
}

function mixesOfSession(whole: WholeTrial, session: Session): TrialMix[] {
  const plan = planOfSession(whole, session)
  const effective = eventsOfSession(whole.events, session.id)
  const runs = stepRuns(session, plan, effective)
  const sheet = weighSheet(plan, whole.kitchen)
  const mixer = mixerOfPlan(plan, whole.kitchen)
  const said = { trialId: whole.trial.id, mixedBy: mixedByOf(plan, whole.kitchen) }
  return session.batches.map((batch): TrialMix => {
    const untold = (reason: UntoldReason): TrialMix => ({ ...said, ok: false, reason })
    const read = mixReading(batch.id, runs, effective)
    if (!read.ok) return untold(read.reason)
    if (read.waterCelsius === null) return untold('water-not-read')
    const weights = sheetOfBatch(sheet.batches, batch.levelId)
    const formula = weights && formulaAsWeighed(weights, weightsOfBatch(effective, batch.id))
    if (!formula) return untold('cannot-be-weighed')
    const bodies = bodiesOf(formula, plan, read, mixer, whole.kitchen)
    if (!bodies) return untold('no-temperatures')
    const at = plan.levels.find(({ id }) => id === batch.levelId) ?? null
    const level = at?.value ?? null
    const left = restShare(restInMixSeconds(plan, at), doughGramsOf(bodies))
    const doughCelsius = beforeRest(read.doughCelsius, bodies.room.celsius, left)
    const mix = { bodies, waterCelsius: read.waterCelsius, doughCelsius, level }
    return { ...said, ok: true, factor: factorScale(plan), mix }
  })
}

function bodiesOf(
  formula: Formula,
  plan: Plan,
  read: MixReading,
  mixer: Mixer | null,
  kitchen: WholeTrial['kitchen'],
) {
  const flourCelsius = read.flourCelsius ?? plan.temperature?.flourCelsius
  const roomCelsius = read.roomCelsius ?? plan.temperature?.roomCelsius
  if (flourCelsius === undefined || roomCelsius === undefined) return null
  const asRead = {
    ...formula,
    ingredients: formula.ingredients.map((one) => {
      const { celsius: _, ...rest } = one
      return read.flourCelsius !== null && one.kind === 'flour' ? rest : one
    }),
    preferments: formula.preferments.map((one) =>
      read.prefermentCelsius === null ? one : { ...one, celsius: read.prefermentCelsius },
    ),
  }
  const { roomHeat } = mixingHeats[mixingWayOf(plan, mixer)]
  const at = { flourCelsius, roomCelsius, roomHeat, moistureOf: moistureIn(kitchen) }
  return mixBodies(asRead, { ...at, ...bowlOf(mixer, roomCelsius) })
}
