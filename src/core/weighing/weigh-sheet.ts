import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { moistureIn } from '@/core/kitchen/flour-moisture.ts'
import type { KitchenThing, Scale } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { keptAnswer } from '@/core/record/kept-answer.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import {
  achievedOf,
  achievedPiece,
  type BatchWeights,
  sharedErrorsOf,
  type WeighLine,
  weighLines,
} from './batch-weights.ts'
import { type DoseAdvice, doseAdvice } from './dose-advice.ts'
import { doseStages, dosesAsked } from './dose-asked.ts'
import { type DoughLine, doughLines } from './dough-lines.ts'
import { type KeptApart, keptApart } from './kept-apart.ts'
import { levelAtFourteen, moistureOfPart } from './level-at-fourteen.ts'
import { scaleErrorsOf } from './scale-errors.ts'

import { type SharedDoseAnswer, type SharedDoseRecipe, sharedDose } from './shared-dose.ts'
import { type SheetTrouble, sheetTroubles } from './sheet-troubles.ts'

export interface SheetRow {
  key: string
  name: string
  into: WeighLine['into']
  what: WeighLine['what']
  prefermentId: string | null
  ingredientId: string | null
  /** One cell a batch, in the order of `batches`; null where the batch takes none. */
  cells: (WeighLine | null)[]
}

export interface Neighbours extends KeptApart {
  lowerLevelId: string
  upperLevelId: string
}

export interface WeighSheet {
  scales: Scale[]
  batches: BatchWeights[]
  rows: SheetRow[]
  /** The stocks (one a stage) and dry mixes the plan shares, with their amounts or why they cannot be made. */
  doses: SharedDoseAnswer[]
  /** Ingredients the scales weigh too coarsely, with a dry mix and a stock that would mend it. */
  advice: DoseAdvice[]
  /** Weights past every scale's capacity, and those too small for the scales that the advice does not speak of. */
  troubles: SheetTrouble[]
  /** Neighbouring levels by value: does the scale keep them apart? Empty where levels are not read from weights. */
  neighbours: Neighbours[]
  /** Levels whose batch cannot be made; `planProblems` says why. */
  unmadeLevelIds: string[]
}

type Dough = { key: string; level: Level | null; formula: Formula; lines: DoughLine[] }

/**
 * The weigh sheet of one session: every batch's weights on the plan's scales (all the kitchen's when it names none),
 * preferment parts before the final dough, stocks and dry mixes taken in, and the level that the rounded weights make
 * with its uncertainty. Without a scale the weights are the targets, unrounded, each marked `no-scale`.
 */
export const weighSheet = keptAnswer((plan: Plan, kitchen: readonly KitchenThing[]): WeighSheet => {
  const scales = scalesOfPlan(plan, kitchen)
  const planned = plannedBatches(plan)
  const doughs = planned.flatMap((one): Dough[] =>
    one.ok
      ? [
          {
            key: one.level?.id ?? 'all',
            level: one.level,
            formula: one.formula,
            lines: doughLines(one.formula),
          },
        ]
      : [],
  )
  const doses = plan.sharedDoses.flatMap((dose) =>
    doseStages(doughs, dose.ingredientId, dose.by).map((stage) => {
      const { carrierId, asked } = dosesAsked(doughs, dose.ingredientId, dose.by, stage)
      return sharedDose(dose, carrierId, asked, scales, stage)
    }),
  )
  const made = doses.filter((dose): dose is SharedDoseRecipe => dose.ok)
  const moistureOf = moistureIn(kitchen)
  const batches = doughs.map((dough) => batchWeights(plan, dough, made, scales, moistureOf))
  const advice = doseAdvice(plan, doughs, batches, scales)
  return {
    scales,
    batches,
    rows: rowsOf(batches),
    doses,
    advice,
    troubles: sheetTroubles(batches, doses, advice, scales),
    neighbours: neighboursOf(batches),
    unmadeLevelIds: planned.flatMap((one) => (one.ok ? [] : [one.level.id])),
  }
})

function batchWeights(
  plan: Plan,
  { key, level, formula, lines: plain }: Dough,
  doses: readonly SharedDoseRecipe[],
  scales: readonly Scale[],
  moistureOf: ReturnType<typeof moistureIn>,
): BatchWeights {
  const { acts } = plan.factor
  const lines = weighLines(key, plain, formula, acts, doses, scales, (part) =>
    moistureOfPart(formula, part, moistureOf),
  )
  const sharedErrors = [
    ...sharedErrorsOf(lines, formula, acts, doses),
    ...scaleErrorsOf(lines, scales),
  ]
  const { pieceGrams } = batchGrams(formula)
  const byPiece = acts.on === 'piece-mass' && level !== null && pieceGrams !== null
  return {
    levelId: level?.id ?? null,
    label: level?.label ?? '',
    planned: level?.value ?? null,
    formula,
    lines,
    doughGrams: doughGramsOf(lines),
    achieved: byPiece ? achievedPiece(pieceGrams, scales) : achievedOf(lines, sharedErrors),
    atFourteen: levelAtFourteen(acts, lines),
    sharedErrors,
  }
}

function doughGramsOf(lines: readonly WeighLine[]): number {
  return lines.reduce(
    (sum, { what, grams, reachesDough }) =>
      sum + (what === 'all-of-preferment' ? 0 : grams * reachesDough),
    0,
  )
}

/**
 * Rows in the order of work: first appearance over the batches, so a line that one batch lacks still has its place. What an
 * option swaps for another thing has a row of its own, directly under it.
 */
function rowsOf(batches: readonly BatchWeights[]): SheetRow[] {
  const all = batches.flatMap(({ lines }) => lines)
  const keys = [...new Set(all.map(({ key }) => key))]
  const ofBatch = batches.map(({ lines }) => new Map(lines.map((line) => [line.key, line])))
  const rows = keys.flatMap((key) => {
    const own = all.filter((line) => line.key === key)
    const names = [...new Set(own.map(({ name }) => name))]
    return names.flatMap((name) => {
      const line = own.find((one) => one.name === name)
      if (!line) return []
      const { into, what, prefermentId, ingredientId } = line
      const cells = ofBatch.map((lines) => {
        const cell = lines.get(key)
        return cell?.name === name ? cell : null
      })
      const rowKey = names.length === 1 ? key : `${key} ${name}`
      return [{ key: rowKey, name, into, what, prefermentId, ingredientId, cells }]
    })
  })
  return rows.toSorted((a, b) => placeOf(a) - placeOf(b))
}

function placeOf({ into }: Pick<WeighLine, 'into'>): number {
  return into === 'preferment' ? 0 : 1
}

function neighboursOf(batches: readonly BatchWeights[]): Neighbours[] {
  const read = batches.flatMap(({ levelId, planned, achieved }) =>
    levelId !== null && planned !== null && achieved ? [{ levelId, planned, achieved }] : [],
  )
  const inOrder = read.toSorted((a, b) => a.planned - b.planned)
  return inOrder.flatMap((upper, index) => {
    const lower = inOrder[index - 1]
    if (!lower) return []
    const ends = { lowerLevelId: lower.levelId, upperLevelId: upper.levelId }
    return [{ ...ends, ...keptApart(lower.achieved, upper.achieved) }]
  })
}

/** The scales a plan is weighed on: those it names, else every scale of the kitchen. */
export function scalesOfPlan(
  plan: Pick<Plan, 'kitchenIds'>,
  kitchen: readonly KitchenThing[],
): Scale[] {
  const named = thingsOfKind(kitchen, 'scale', plan.kitchenIds)
  return named.length > 0 ? named : thingsOfKind(kitchen, 'scale')
}
