import type { BenchEntry } from './new-event.ts'
import type { ToWeigh } from './to-weigh.ts'

/**
 * What one press on a line of the weigh sheet logs: its reading; weighed again, the reading in place of the last one, and
 * earlier goes of the same ingredient taken back, so that the reading is the whole. Empty for a line that is not logged.
 */
export function weighPress(line: ToWeigh, batchId: string, grams: number): BenchEntry[] {
  if (line.loggedAs === null) return []
  const about = { kind: 'batch' as const, id: batchId }
  const { ingredientId, prefermentId } = line.loggedAs
  const before = line.logged?.eventIds ?? []
  const last = before.at(-1)
  return [
    ...before.slice(0, -1).map((corrects): BenchEntry => ({ kind: 'void', about, corrects })),
    {
      kind: 'weighed',
      about,
      ingredientId,
      grams,
      ...(prefermentId === null ? {} : { prefermentId }),
      ...(last === undefined ? {} : { corrects: last }),
    },
  ]
}
