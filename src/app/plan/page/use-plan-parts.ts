import { useState } from 'react'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { PlanPage } from './plan-page.ts'
import { usePlanPage } from './plan-page-context.ts'

/**
 * The plan as it stood when one of these parts last changed: what is computed from them alone is not computed again while
 * a name or a note is typed elsewhere. The parts are read at the first render only.
 */
export function usePlanParts(parts: readonly (keyof Plan)[]): Plan {
  const [select] = useState(() => {
    let last: Plan | undefined
    return ({ plan }: PlanPage) => {
      const before = last
      if (!before || parts.some((part) => before[part] !== plan[part])) last = plan
      return last ?? plan
    }
  })
  return usePlanPage(select)
}
