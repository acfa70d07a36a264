import type { WaterPlan, WaterPlanTrouble } from '@/core/dough-temperature/water-plan.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { degreesWithSign, ownDegreeSign } from '@/core/units/temperature-text.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { type WrittenRow, writtenSheet } from '@/core/weighing/written-sheet.ts'
import { sheetFindingTexts } from '@/core/wording/weighing/sheet-findings-text.ts'
import { waterLines } from '@/core/wording/weighing/water-lines.ts'
import {
  ownDegreeWords,
  unwateredWords,
  warmthWords,
  waterWarnings,
  whyNoWater,
} from '@/core/wording/weighing/water-text.ts'
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
  const { weights, comesTo } = writtenSheet(sheet, unit)
  const table = textTable(
    [massUnit(), ...names],
    [...weights.map(textRow), ...waterRowsOf(plan, sheet, water), ...comesTo.map(textRow)],
    [false, ...names.map(() => true)],
  )
  const remarks = [...sheetFindingTexts(sheet, plan), ...waterRemarks(plan, water)].filter(
    (text) => text !== '',
  )
  return [
    plan.question,
    ...stopsText(stops),
    table,
    ...remarks.map((text) => wrapped(text, '- ')),
  ].join('\n\n')
}

const textRow = ({ head, cells }: WrittenRow) => [head, ...cells]

/** Lines of water temperature under the weights, each batch in its own column. */
function waterRowsOf(
  { temperature }: Plan,
  sheet: WeighSheet,
  water: WaterPlan | WaterPlanTrouble,
): string[][] {
  if (!water.ok) return []
  const lines = waterLines(
    water,
    temperature?.matched === true,
    ownDegreeWords(),
    `Water at, ${ownDegreeSign()}`,
  )
  const places = sheet.batches.map((batch) =>
    water.batches.findIndex(({ levelId }) => levelId === batch.levelId),
  )
  return lines.map(({ head, cells }) => [head, ...places.map((at) => cells[at] ?? '–')])
}

function waterRemarks({ temperature }: Plan, water: WaterPlan | WaterPlanTrouble): string[] {
  if (!water.ok)
    return water.reason === 'no-water-at-mix'
      ? [unwateredWords(water, ownDegreeWords())]
      : temperature
        ? [whyNoWater(water.reason)]
        : []
  return [
    `For dough of ${degreesWithSign(water.wantedDoughCelsius, 1)}. ${warmthWords(water, ownDegreeWords())}`,
    ...waterWarnings(water, ownDegreeWords()),
  ]
}
