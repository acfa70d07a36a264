import { batchGrams } from '@/core/formula/batch-grams.ts'
import { coldPlaces } from '@/core/trial/cold-places.ts'
import { mixedApart } from '@/core/trial/doughs.ts'
import type { Level } from '@/core/trial/level.ts'
import { piecesAsked } from '@/core/trial/pieces-asked.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import type { Step } from '@/core/trial/step.ts'
import { staggerSeconds } from './bake-order.ts'
import { ovenHeat } from './oven-heat.ts'
import { ovenLoads } from './oven-loads.ts'
import { splitIndex } from './split-index.ts'
import { stepAtLevel } from './step-at-level.ts'

/** More samples than this tire a mouth: common practice in sensory work. */
export const mostSamples = 6
/** A mouthful, where the piece is large enough for everybody: common practice, no source. */
const biteGrams = 20

/** What one session asks of dough, room, hands, oven and mouths. */
export interface DayCost {
  doughGrams: number
  batches: number
  pieces: number
  /** One for each dough. */
  tubs: number
  /** Places for doughs, or pieces, that prove cold at once. */
  fridgePlaces: number
  handsSeconds: number
  ovenSeconds: number
  loads: number
  /** Everything a taster is given in one sitting: servings, warm-up and tell-apart samples. */
  samplesPerSitting: number
  tooManySamples: boolean
  bitesPerMouth: number
  gramsPerMouth: number | null
  /** From the first hand to the last piece cut, roughly: for one pair of hands, oven after oven load. */
  spanSeconds: number
}

/**
 * What the day of one session costs by its plan. Hands and waits are summed over the steps as each level has them; the span is
 * rough: one dough's way to the oven, one stagger for each further dough or the loads one after another, whichever ends
 * later, then the way from oven to mouth. Refuses when a dough cannot be made.
 */
export function dayCost(
  plan: Plan,
): ({ ok: true } & DayCost) | { ok: false; reason: 'dough-not-made'; levelIds: string[] } {
  const doughs = plannedBatches(plan)
  const unmade = doughs.flatMap((dough) => (dough.ok ? [] : [dough.level.id]))
  if (unmade.length > 0) return { ok: false, reason: 'dough-not-made', levelIds: unmade }
  const grams = doughs.flatMap((dough) => (dough.ok ? [batchGrams(dough.formula)] : []))
  const doughGrams = sum(grams.map((batch) => batch.doughGrams))
  const asked = piecesAsked(plan)
  const counts = { batches: doughs.length, pieces: asked.total }
  const loads = loadCount(plan)
  const samples =
    asked.counted + asked.warmUp + (plan.tellApart ? samplesOf(plan.tellApart.test) : 0)
  const pieceGrams = grams[0]?.pieceGrams ?? (asked.total > 0 ? doughGrams / asked.total : null)
  const bite =
    pieceGrams === null ? null : Math.min(biteGrams, pieceGrams / Math.max(1, plan.tasters.length))
  return {
    ok: true,
    doughGrams,
    ...counts,
    tubs: doughs.length,
    fridgePlaces: coldPlaces(plan),
    handsSeconds: handsSeconds(plan),
    ovenSeconds: loads * ovenSecondsOfLoad(plan),
    loads,
    samplesPerSitting: samples,
    tooManySamples: samples > mostSamples,
    bitesPerMouth: samples,
    gramsPerMouth: bite === null ? null : bite * samples,
    spanSeconds: spanSeconds(plan, loads),
  }
}

const samplesOf = (test: 'triangle' | 'duo-trio' | 'paired') => (test === 'paired' ? 2 : 3)

function loadCount(plan: Plan): number {
  if (!plan.steps.some((step) => step.kind === 'bake')) return 0
  return ovenLoads({
    warmUp: plan.warmUpPiece ? (plan.levels[0] ?? null) : null,
    flights: Array.from({ length: plan.flights }, () => plan.levels),
    placesPerLoad: plan.placesPerLoad,
    asBaked: plan.serving === 'as-baked',
    heatOf: (level) => ovenHeat(plan, level),
  }).length
}

function handsSeconds(plan: Plan): number {
  const apart = mixedApart(plan)
  const split = splitIndex(plan)
  const each = plan.flights + plan.sparePieces
  return sum(
    plan.steps.map((step, index) => {
      const isOne = !apart && step.per === 'batch' && (index < split || step.kind === 'divide')
      if (isOne) return step.handsSeconds * step.repeats
      const perLevel = step.per === 'piece' || !apart ? each : 1
      const warmUp = step.per === 'piece' && plan.warmUpPiece ? step.handsSeconds * step.repeats : 0
      return sum(plan.levels.map((level) => perLevel * hands(plan, step, level))) + warmUp
    }),
  )
}

function hands(plan: Plan, step: Step, level: Level): number {
  const own = stepAtLevel(plan.factor, step, level)
  return own ? own.handsSeconds * own.repeats : 0
}

function ovenSecondsOfLoad(plan: Plan): number {
  const bakes = plan.steps.filter((step) => step.kind === 'bake')
  return sum(
    bakes.map((step) => {
      const each = plan.levels.map((level) => secondsOf(stepAtLevel(plan.factor, step, level)))
      return sum(each) / Math.max(1, each.length)
    }),
  )
}

function spanSeconds(plan: Plan, loads: number): number {
  const bake = plan.steps.findIndex((step) => step.kind === 'bake')
  const longest = (steps: readonly Step[]) =>
    Math.max(
      0,
      ...plan.levels.map((level) =>
        sum(steps.map((step) => secondsOf(stepAtLevel(plan.factor, step, level)))),
      ),
    )
  const before = longest(bake < 0 ? plan.steps : plan.steps.slice(0, bake))
  const after = bake < 0 ? 0 : longest(plan.steps.slice(bake + 1))
  const further = (mixedApart(plan) ? plan.levels.length - 1 : 0) * staggerSeconds(plan)
  const load = ovenSecondsOfLoad(plan)
  return before + Math.max(further + load, loads * load) + after
}

const secondsOf = (step: Step | null) =>
  step ? (step.handsSeconds + step.waitSeconds) * step.repeats : 0

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
