import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureText } from '@/app/kit/field/temperature-words.ts'
import { partResults } from '@/core/wording/plan/part-results.ts'
import { usePlanPage } from './plan-page-context.ts'

/** What stands in each folded part of the plan, in one line. */
export function usePartResults() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const unit = useTemperatureUnit()
  return partResults(plan, kitchen, (celsius) => temperatureText(celsius, unit))
}
