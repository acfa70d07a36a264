import type { Formula } from '@/core/formula/formula-record.ts'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { hydrationPercent } from '@/core/formula/hydration.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import { movesFormula } from '@/core/trial/moves-formula.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { referenceLevel } from '@/core/trial/reference-level.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { type WeighSheet, weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import { ownWatersText } from '@/core/wording/plan/own-waters-text.ts'
import { sheetFindingTexts } from '@/core/wording/weighing/sheet-findings-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import type { ReportBlock, ReportSection, TableBlock } from './report-block.ts'

/** The formula in baker's percentages, and the weigh sheet of every batch with what it found: it can be weighed from. */
export function weightsSection(plan: Plan, kitchen: readonly KitchenThing[]): ReportSection {
  const { formula, at } = shownFormula(plan)
  const moves = movesFormula(plan)
  const caption = moves || plan.factor.acts.on === 'piece-mass' ? at : ''
  const sheet = weighSheet(plan, kitchen)
  const waters = ownWatersText(plan.levels)
  const items = [
    ...(waters === null ? [] : [`Each level has its own water: ${waters}.`]),
    ...sheetFindingTexts(sheet, plan),
  ]
  return {
    id: 'weights',
    title: 'Formula and weights',
    blocks: [
      formulaTable(formula, caption, moves),
      ...prefermentBlocks(formula),
      batchesTable(plan, sheet),
      ...(items.length > 0 ? [{ kind: 'list' as const, items }] : []),
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
  return percentTable(
    `Formula of the whole dough${at}, in baker’s percentages${moves ? '; the factor moves its own ingredient' : ''}`,
    '% of flour',
    formulaViews(formula).overall,
  )
}

function prefermentBlocks(formula: Formula): ReportBlock[] {
  return formulaViews(formula).preferments.map(({ name, rows }) =>
    percentTable(`${name}, part of the above`, '% of its flour', rows),
  )
}

function percentTable(
  caption: string,
  percents: string,
  rows: readonly { name: string; percent: number | null }[],
): TableBlock {
  return {
    kind: 'table',
    caption,
    head: ['Ingredient', percents],
    rows: rows.map(({ name, percent }) => [name, percent === null ? '–' : percentOf(percent)]),
    figures: [false, true],
  }
}

/** The weigh sheet, one column a batch; the hydration under it is that of the formula. */
function batchesTable(plan: Plan, sheet: WeighSheet): TableBlock {
  const { weights, comesTo } = writtenSheet(sheet, plan.factor.unitOfMeasure)
  const hydration = sheet.batches.map(({ formula }) => {
    const percent = hydrationPercent(formula)
    return percent === null ? '–' : `${decimalText(percent, 1)} %`
  })
  const names = sheet.batches.map(({ levelId }) => {
    const level = plan.levels.find(({ id }) => id === levelId)
    return level ? levelText(level, plan.factor.unitOfMeasure) : 'all levels'
  })
  return {
    kind: 'table',
    caption: `Planned weights of each batch, ${massUnit()}`,
    head: ['What', ...names],
    rows: [
      ...[...weights, ...comesTo].map(({ head, cells }) => [head, ...cells]),
      ['Hydration of the formula', ...hydration],
    ],
    figures: [false, ...names.map(() => true)],
  }
}

function percentOf(percent: number): string {
  return plainNumber(Math.round(percent * 100) / 100)
}
