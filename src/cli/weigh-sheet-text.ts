import type { WaterPlan, WaterPlanTrouble } from '@/core/dough-temperature/water-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { gramsText } from '@/core/units/grams-text.ts'
import { decimalText, shortUnit } from '@/core/units/number-text.ts'
import type { SheetRow, WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { differenceDecimals } from '@/core/wording/findings/difference-text.ts'
import { waterLines } from '@/core/wording/weighing/water-lines.ts'
import {
  type DegreeWords,
  unwateredWords,
  warmthWords,
  waterWarnings,
  whyNoWater,
} from '@/core/wording/weighing/water-text.ts'
import { sheetTroubleTexts } from '@/core/wording/weighing/weigh-trouble-text.ts'
import {
  doseAdviceText,
  keptApartText,
  sharedDoseText,
} from '@/core/wording/weighing/weighing-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { stopsText } from './plan-stops.ts'
import { textTable } from './text-table.ts'
import { wrapped } from './wrapped.ts'

/** The weigh sheet for the terminal: one column a batch, the achieved level under it, remarks below; what stops the plan stands over it. */
export function weighSheetText(
  plan: Plan,
  sheet: WeighSheet,
  water: WaterPlan | WaterPlanTrouble,
  stops: readonly string[],
): string {
  const unit = plan.factor.unitOfMeasure
  const names = sheet.batches.map((batch) => {
    const level = plan.levels.find(({ id }) => id === batch.levelId)
    return level ? levelText(level, unit) : 'all levels'
  })
  const rows = sheet.rows.map((row) => [
    nameOf(row, plan),
    ...row.cells.map((cell) => (cell ? gramsText(cell.grams, cell.resolutionGrams) : '–')),
  ])
  const dough = sheet.batches.map((batch) => decimalText(batch.doughGrams, 1))
  const finest = Math.min(
    ...sheet.batches.flatMap(({ achieved }) => achieved?.expandedUncertainty || []),
  )
  const decimals = Number.isFinite(finest) ? differenceDecimals(finest) : 2
  const achieved = sheet.batches.map((batch) =>
    batch.achieved ? decimalText(batch.achieved.value, decimals) : '–',
  )
  const surely = sheet.batches.map(({ achieved: level }) =>
    level ? `± ${decimalText(level.expandedUncertainty, decimals)}` : '–',
  )
  const atFourteen = sheet.batches.map(({ atFourteen: level }) =>
    level === null ? '–' : decimalText(level, Math.min(decimals, 2)),
  )
  const table = textTable(
    ['g', ...names],
    [
      ...rows,
      ...waterRowsOf(plan, sheet, water),
      ['Dough', ...dough],
      [`Achieved, ${shortUnit(unit) || unit}`, ...achieved],
      ['', ...surely],
      ...(atFourteen.some((cell) => cell !== '–')
        ? [['At 14 % flour moisture', ...atFourteen]]
        : []),
    ],
    [false, ...names.map(() => true)],
  )
  const remarks = [
    ...sheetTroubleTexts(sheet, plan),
    ...waterRemarks(plan, water),
    ...sheet.doses.map((dose) => sharedDoseText(dose, plan)),
    ...sheet.advice.map((advice) => doseAdviceText(advice, plan)),
    ...sheet.neighbours.map((pair) => keptApartText(pair, plan)),
  ].filter((text) => text !== '')
  return [
    plan.question,
    ...stopsText(stops),
    table,
    ...remarks.map((text) => wrapped(text, '- ')),
  ].join('\n\n')
}

/** A line's name, with what goes into the bowl where that is not the ingredient itself, and what is made ahead. */
function nameOf({ name, what, into, ingredientId }: SheetRow, { sharedDoses }: Plan): string {
  const shared = sharedDoses.find((dose) => dose.ingredientId === ingredientId)
  const as =
    what === 'dose' && shared ? (shared.by === 'stock' ? ', as stock' : ', as dry mix') : ''
  return `${name}${as}${into === 'preferment' ? ' (ahead)' : ''}`
}

/** How the terminal writes temperatures: in °C. */
const celsiusWords: DegreeWords = {
  sign: '°C',
  degrees: (celsius, decimals) => decimalText(celsius, decimals),
  steps: (celsius, decimals) => decimalText(celsius, decimals),
}

/** Lines of water temperature under the weights, each batch in its own column. */
function waterRowsOf(
  { temperature }: Plan,
  sheet: WeighSheet,
  water: WaterPlan | WaterPlanTrouble,
): string[][] {
  if (!water.ok) return []
  const lines = waterLines(water, temperature?.matched === true, celsiusWords, 'Water at, °C')
  const places = sheet.batches.map((batch) =>
    water.batches.findIndex(({ levelId }) => levelId === batch.levelId),
  )
  return lines.map(({ head, cells }) => [head, ...places.map((at) => cells[at] ?? '–')])
}

function waterRemarks({ temperature }: Plan, water: WaterPlan | WaterPlanTrouble): string[] {
  if (!water.ok)
    return water.reason === 'no-water-at-mix'
      ? [unwateredWords(water, celsiusWords)]
      : temperature
        ? [whyNoWater(water.reason)]
        : []
  return [
    `For dough of ${decimalText(water.wantedDoughCelsius, 1)} °C. ${warmthWords(water, celsiusWords)}`,
    ...waterWarnings(water, celsiusWords),
  ]
}
