import type { FairnessItem } from '@/core/fairness/fairness-item.ts'

/** How the fairness check came out, as three counts: "1 to fix, 8 to know, 13 fine". */
export function fairnessCountText(items: readonly Pick<FairnessItem, 'severity'>[]): string {
  const count = (severity: FairnessItem['severity']) =>
    items.filter((item) => item.severity === severity).length
  return `${count('fix')} to fix, ${count('know')} to know, ${count('fine')} fine`
}
