import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText } from '@/core/units/number-text.ts'
import type { Neighbours, WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'

/** That weights stand unrounded, and the mend. */
export const withoutScaleText =
  'Without a scale the weights are the targets, unrounded. Choose your scales under Kitchen.'

/** Whether the scales keep neighbouring levels apart, and the mend where they do not; empty where no level is read from weights. */
export function scalesApartText(
  { scales, neighbours }: Pick<WeighSheet, 'scales' | 'neighbours'>,
  plan: Pick<Plan, 'levels' | 'factor'>,
): string {
  if (scales.length === 0) return withoutScaleText
  if (neighbours.length === 0) return ''
  const blurred = neighbours.filter(({ apart }) => apart !== 'kept-apart')
  if (blurred.length === 0) return 'The scales keep all levels apart.'
  const said = blurred.map((pair) => pairApartText(pair, plan))
  return `${said.join(' ')} Widen the gap, make larger batches, or use a finer scale.`
}

/** How well the scales keep two neighbouring levels apart, in the factor's unit. */
export function pairApartText(pair: Neighbours, plan: Pick<Plan, 'levels' | 'factor'>): string {
  const how = { 'kept-apart': 'keep', barely: 'barely keep', not: 'do not keep' }[pair.apart]
  const [lower, upper] = [pair.lowerLevelId, pair.upperLevelId].map((id) => levelNamed(plan, id))
  return `The scales ${how} ${lower} and ${upper} apart: they blur by ${decimalText(pair.blur, 2)} over a gap of ${decimalText(pair.gap, 2)}.`
}
