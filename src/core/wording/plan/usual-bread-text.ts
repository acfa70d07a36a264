import type { UsualBread } from '@/core/plan-edits/start/usual-breads.ts'
import { plainNumber } from '@/core/units/number-text.ts'

/** What a usual bread is made of, beside its flour: “Water 62, salt 2, butter 3 % of flour”; the share a levain takes last. */
export function usualBreadText({ lines, levainPercent }: UsualBread): string {
  const parts = lines
    .filter(({ kind }) => kind !== 'flour')
    .map(
      ({ name, percent }, at) => `${at === 0 ? name : name.toLowerCase()} ${plainNumber(percent)}`,
    )
  const levain =
    levainPercent === undefined ? '' : `, ${plainNumber(levainPercent)} % of the flour in a levain`
  return `${parts.join(', ')} % of flour${levain}`
}

/** What the percentages of usual breads rest on. */
export const usualBreadsRestOn = 'Common practice, no source. All of it can be changed.'
