import type { FairnessCode } from './fairness-data.ts'
import type { Severity } from './fairness-item.ts'
import { thresholds } from './thresholds.ts'

/** How much an item of this size weighs, by the table of thresholds: a size that reaches a threshold counts as past it. */
export function severityOf(code: FairnessCode, size: number): Severity {
  const { know, fix } = thresholds[code]
  const reached = (limit: number | null) => limit !== null && Math.abs(size) >= limit - 1e-9
  if (reached(fix)) return 'fix'
  return reached(know) ? 'know' : 'fine'
}
