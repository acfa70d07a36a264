import type { FairnessItem, Severity } from './fairness-item.ts'

const weight: Record<Severity, number> = { fix: 0, know: 1, fine: 2 }

/** Items with what the baker has accepted taken as known, the most pressing first; else in the order they were found. */
export function inTurn(
  items: readonly FairnessItem[],
  accepted: readonly string[],
): FairnessItem[] {
  return items
    .map((item): FairnessItem => {
      if (!accepted.includes(item.key) || item.severity === 'fine') return item
      return { ...item, accepted: true, severity: 'know' }
    })
    .toSorted((a, b) => weight[a.severity] - weight[b.severity])
}

/** How much was made and asked: no rider. The verdict's own claim allows for it, and repeating or confirming is its mend. */
const ofEvidence: ReadonlySet<string> = new Set(['one-session', 'few-tasters', 'few-sessions'])

/** What is left to fix once the trial was made: riders, blindness and handling, not how much evidence there is. */
export function leftToMend(items: readonly FairnessItem[]): FairnessItem[] {
  return items.filter(({ severity, code }) => severity === 'fix' && !ofEvidence.has(code))
}

/** How many items are left to fix: what the findings name first as the next step. */
export function toMend(items: readonly FairnessItem[]): number {
  return leftToMend(items).length
}
