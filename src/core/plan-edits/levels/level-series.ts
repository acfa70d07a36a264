import { namingWhatStands } from '@/core/plan-edits/parts/what-stands.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { measuredLevel } from './measured-level.ts'

/**
 * Levels replaced by a series. A value that stood there before keeps its level with its id and mark, so that nothing
 * that names it is lost; a control that is not among them hands its mark to the nearest value, the lower of two.
 */
export function withSeries(plan: Plan, values: readonly number[], newId: () => string): Plan {
  const levels = values.map(
    (value) => plan.levels.find((level) => level.value === value) ?? measuredLevel(newId(), value),
  )
  const control = plan.levels.find((level) => level.control)?.value ?? null
  if (control === null || levels.some((level) => level.control))
    return namingWhatStands({ ...plan, levels })
  const away = levels.map(({ value }) => Math.abs((value ?? control) - control))
  const nearest = away.indexOf(Math.min(...away))
  return namingWhatStands({
    ...plan,
    levels: levels.map((level, at) => ({ ...level, control: at === nearest })),
  })
}
