import { batchGrams } from '@/core/formula/batch-grams.ts'
import { coldPlaces } from '@/core/trial/cold-places.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { type DayTask, dayTasks, isForAllDoughs } from './day-tasks.ts'
import type { DealtDay } from './dealt-day.ts'
import { plannedDay } from './planned-day.ts'
import { mostSamples, samplesPerSitting } from './samples-per-sitting.ts'

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
  /** From the first hand to the last thing done, as the day is planned. */
  spanSeconds: number
}

/**
 * What one session costs by its planned day: hands of every dough and piece, spare ones too, as each level has its steps; the
 * oven load by load, each as long as its longest bake; the span from the first hand to the last thing done. Refuses when a
 * dough cannot be made.
 */
export function dayCost(
  plan: Plan,
  day: DealtDay,
): ({ ok: true } & DayCost) | { ok: false; reason: 'dough-not-made'; levelIds: string[] } {
  const doughs = plannedBatches(plan)
  const unmade = doughs.flatMap((dough) => (dough.ok ? [] : [dough.level.id]))
  if (unmade.length > 0) return { ok: false, reason: 'dough-not-made', levelIds: unmade }
  const grams = doughs.flatMap((dough) => (dough.ok ? [batchGrams(dough.formula)] : []))
  const doughGrams = sum(grams.map((batch) => batch.doughGrams))
  const pieces = day.pieces.length
  const { spanSeconds, bakes } = plannedDay(plan, day)
  const longest = new Map<number, number>()
  for (const { load, holdSeconds } of bakes)
    longest.set(load, Math.max(longest.get(load) ?? 0, holdSeconds))
  const samples = samplesPerSitting(plan)
  const pieceGrams = grams[0]?.pieceGrams ?? (pieces > 0 ? doughGrams / pieces : null)
  const bite =
    pieceGrams === null ? null : Math.min(biteGrams, pieceGrams / Math.max(1, plan.tasters.length))
  return {
    ok: true,
    doughGrams,
    batches: day.batches.length,
    pieces,
    tubs: day.batches.length,
    fridgePlaces: coldPlaces(plan),
    handsSeconds: sum(
      askedForOnce(dayTasks(plan, day, () => true)).map(({ step }) => step.handsSeconds),
    ),
    ovenSeconds: sum([...longest.values()]),
    loads: longest.size,
    samplesPerSitting: samples,
    tooManySamples: samples > mostSamples,
    bitesPerMouth: samples,
    gramsPerMouth: bite === null ? null : bite * samples,
    spanSeconds,
  }
}

/** What the hands are asked for: a step that is done once for all doughs together is asked for once, with its first dough. */
function askedForOnce(tasks: readonly DayTask[]): DayTask[] {
  const asked = new Set<string>()
  return tasks.filter((task) => {
    if (!isForAllDoughs(task)) return true
    const key = `${task.step.id} ${task.repeat}`
    const first = !asked.has(key)
    asked.add(key)
    return first
  })
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
