import type { LearnedWork } from '@/core/dough-temperature/learn-mixing-work.ts'
import { type WaterPlan, waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { IngredientKind } from '@/core/formula/formula-record.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { WeighLine } from '@/core/weighing/batch-weights.ts'
import { type WeighSheet, weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { formulaAtYield, pieceGramsOf } from './formula-at-yield.ts'
import type { HouseRevision, Yield } from './house-record.ts'
import { planOfHouse, type Today } from './plan-of-house.ts'

/** One thing to weigh, and its share of all the flour; null for what goes in whole. */
export interface CardLine {
  key: string
  name: string
  kind: IngredientKind | null
  percent: number | null
  /** What the scale is to show. */
  grams: number
  resolutionGrams: number | null
  trouble: WeighLine['trouble']
}

/** A preferment as it is fed, or the final dough, in the order of work. */
export interface CardPart {
  key: string
  /** The preferment's name; null for the dough. */
  preferment: string | null
  lines: CardLine[]
}

export interface HouseCard {
  parts: CardPart[]
  doughGrams: number
  flourGrams: number
  hydrationPercent: number | null
  pieces: number | null
  pieceGrams: number | null
  /** Null where no temperature is set, or no water goes in at the mix. */
  water: WaterPlan | null
  sheet: WeighSheet
}

/**
 * A house formula to weigh out at a yield, on the kitchen's scales: each preferment as it is fed, then the dough, with the
 * share of all flour beside each weight, and the water temperature for today's kitchen.
 */
export function houseCard(
  revision: HouseRevision,
  name: string,
  kitchen: readonly KitchenThing[],
  {
    made = revision.yield,
    today = {},
    learned = null,
  }: { made?: Yield; today?: Today; learned?: LearnedWork | null } = {},
): HouseCard {
  const plan = planOfHouse(revision, name, made, today)
  const formula = formulaAtYield(revision.formula, made)
  const { flourGrams, doughGrams } = batchGrams(formula)
  const sheet = weighSheet(plan, kitchen)
  const lines = sheet.batches[0]?.lines ?? []
  const water = waterPlan(plan, kitchen, learned)
  const cardLine = (line: WeighLine): CardLine => ({
    key: line.key,
    name: line.name,
    kind: formula.ingredients.find(({ id }) => id === line.ingredientId)?.kind ?? null,
    percent:
      line.ingredientId === null || flourGrams === 0 ? null : (line.targetGrams / flourGrams) * 100,
    grams: line.grams,
    resolutionGrams: line.resolutionGrams,
    trouble: line.trouble,
  })
  const ahead = formula.preferments.map((one) => ({
    key: one.id,
    preferment: one.name,
    lines: lines
      .filter(({ into, prefermentId }) => into === 'preferment' && prefermentId === one.id)
      .map(cardLine),
  }))
  const dough = {
    key: 'dough',
    preferment: null,
    lines: lines.filter(({ into }) => into !== 'preferment').map(cardLine),
  }
  return {
    parts: [...ahead, dough].filter((part) => part.lines.length > 0),
    doughGrams,
    flourGrams,
    hydrationPercent: hydrationPercent(formula),
    pieces: made.by === 'flour' ? null : made.pieces,
    pieceGrams: pieceGramsOf(made),
    water: water.ok ? water : null,
    sheet,
  }
}
