import type { Plan } from '@/core/trial/plan-record.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { scalesApartText } from './scales-apart-text.ts'
import { sheetTroubleTexts } from './weigh-trouble-text.ts'
import { doseAdviceText, sharedDoseText } from './weighing-text.ts'

/** All that a weigh sheet finds, in sentences: levels kept apart, what cannot be weighed, stocks and mixes, and what wants one. */
export function sheetFindingTexts(
  sheet: WeighSheet,
  plan: Pick<Plan, 'formula' | 'levels' | 'factor'>,
): string[] {
  return [
    scalesApartText(sheet, plan),
    ...sheetTroubleTexts(sheet, plan),
    ...sheet.doses.map((dose) => sharedDoseText(dose, plan)),
    ...sheet.advice.map((advice) => doseAdviceText(advice, plan)),
  ].filter((text) => text !== '')
}
