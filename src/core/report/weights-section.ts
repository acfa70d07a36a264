import { batchGrams } from '@/core/formula/batch-grams.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import { movesFormula } from '@/core/trial/moves-formula.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plannedBatches } from '@/core/trial/planned-batches.ts'
import { referenceLevel } from '@/core/trial/reference-level.ts'
import { gramsText } from '@/core/units/grams-text.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import type { ReportBlock, ReportSection, TableBlock } from './report-block.ts'

/** The formula in baker's percentages and the grams of every batch, preferments apart. */
export function weightsSection(plan: Plan): ReportSection {
  const { formula, at } = shownFormula(plan)
  const moves = movesFormula(plan)
  const caption = moves || plan.factor.acts.on === 'piece-mass' ? at : ''
  return {
    id: 'weights',
    title: 'Formula and weights',
    blocks: [
      formulaTable(formula, caption, moves),
      ...prefermentBlocks(formula),
      batchesTable(plan),
    ],
  }
}

/** The formula as the control has it (else the middle level), and how that level is called. */
function shownFormula(plan: Plan): { formula: Formula; at: string } {
  const level = referenceLevel(plan.levels)
  const moved = level ? formulaAtLevel(plan, level) : null
  if (!level || !moved?.ok) return { formula: plan.formula, at: '' }
  return { formula: moved.formula, at: ` at ${levelText(level, plan.factor.unitOfMeasure)}` }
}

function formulaTable(formula: Formula, at: string, moves: boolean): TableBlock {
  const views = formulaViews(formula)
  return {
    kind: 'table',
    caption: `Formula of the whole dough${at}, in baker’s percentages${moves ? '; the factor moves its own ingredient' : ''}`,
    head: ['Ingredient', '% of flour', 'g'],
    rows: views.overall.map((row) => [
      row.name,
      row.percent === null ? '–' : percentOf(row.percent),
      gramsText(row.grams),
    ]),
    figures: [false, true, true],
  }
}

function prefermentBlocks(formula: Formula): ReportBlock[] {
  return formulaViews(formula).preferments.map((preferment) => ({
    kind: 'table' as const,
    caption: `${preferment.name}, part of the above`,
    head: ['Ingredient', '% of its flour', 'g'],
    rows: preferment.rows.map((row) => [
      row.name,
      row.percent === null ? '–' : percentOf(row.percent),
      gramsText(row.grams),
    ]),
    figures: [false, true, true],
  }))
}

type OverallRow = ReturnType<typeof formulaViews>['overall'][number]

/** Weights of every batch; what an option swaps for another thing has a row of its own. */
function batchesTable(plan: Plan): TableBlock {
  const batches = plannedBatches(plan).filter((batch) => batch.ok)
  const views = batches.map(({ formula }) => formulaViews(formula))
  const keyOf = (row: OverallRow) => `${row.ingredientId} ${row.name}`
  const named = new Map(views.flatMap(({ overall }) => overall.map((row) => [keyOf(row), row])))
  const order = views[0]?.overall.map(({ ingredientId }) => ingredientId) ?? []
  const turn = ({ ingredientId }: OverallRow) => order.indexOf(ingredientId)
  const rows = [...named.values()]
    .toSorted((one, other) => turn(one) - turn(other))
    .map((row) => [
      row.name,
      ...views.map((view) => {
        const own = view.overall.find((each) => keyOf(each) === keyOf(row))
        return own ? gramsText(own.grams) : '–'
      }),
    ])
  const dough = batches.map(({ formula }) => gramsText(batchGrams(formula).doughGrams))
  const water = batches.map(({ formula }) => {
    const hydration = hydrationPercent(formula)
    return hydration === null ? '–' : `${decimalText(hydration, 1)} %`
  })
  const names = batches.map(({ level }) =>
    level === null ? 'all levels' : levelText(level, plan.factor.unitOfMeasure),
  )
  return {
    kind: 'table',
    caption: 'Planned weights of each batch, g',
    head: ['Ingredient', ...names],
    rows: [...rows, ['Dough', ...dough], ['Hydration', ...water]],
    figures: [false, ...batches.map(() => true)],
  }
}

function percentOf(percent: number): string {
  return plainNumber(Math.round(percent * 100) / 100)
}
