import type { DoughLine } from './dough-lines.ts'
import type { DoseAsked } from './shared-dose.ts'

/** A line of one batch, named across batches. */
export function doseKey(batchKey: string, line: Pick<DoughLine, 'key'>): string {
  return `${batchKey} ${line.key}`
}

/** The kind of ingredient a stock or a dry mix is made with. */
export function carrierKind(by: 'stock' | 'dry-mix'): 'water' | 'flour' {
  return by === 'stock' ? 'water' : 'flour'
}

/** The line that gives way to a dose in the same place: the most plentiful water or flour there. */
export function carrierLine(
  lines: readonly DoughLine[],
  place: DoughLine,
  kind: 'water' | 'flour',
): DoughLine | null {
  const prefermentId = place.into === 'preferment' ? place.prefermentId : null
  const [most] = lines
    .filter(
      (line) =>
        line.kind === kind && line.into === place.into && line.ingredientId !== place.ingredientId,
    )
    .filter((line) => (line.into === 'preferment' ? line.prefermentId : null) === prefermentId)
    .toSorted((a, b) => b.targetGrams - a.targetGrams)
  return most ?? null
}

/**
 * What every batch asks of a shared dose, and the carrier it is to be made with; null where nothing carries it, or not the
 * same in every batch: a dry mix in one flour would bring that flour into the others' doughs.
 */
export function dosesAsked(
  batches: readonly { key: string; lines: readonly DoughLine[] }[],
  ingredientId: string,
  by: 'stock' | 'dry-mix',
): { carrierId: string | null; asked: DoseAsked[] } {
  const carriers = new Map<string, string>()
  const asked: DoseAsked[] = []
  for (const { key, lines } of batches) {
    for (const line of lines) {
      if (line.ingredientId !== ingredientId || line.what !== 'ingredient') continue
      const carrier = carrierLine(lines, line, carrierKind(by))
      if (!carrier) continue
      carriers.set(`${carrier.ingredientId} ${carrier.name}`, carrier.ingredientId ?? '')
      const carrierGrams = carrier.targetGrams
      asked.push({ key: doseKey(key, line), ingredientGrams: line.targetGrams, carrierGrams })
    }
  }
  const [carrierId] = carriers.values()
  return { carrierId: carriers.size === 1 ? (carrierId ?? null) : null, asked }
}
