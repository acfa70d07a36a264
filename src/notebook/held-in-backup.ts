import * as z from 'zod/mini'
import { wholeShape } from '@/core/record/count.ts'

/** What a backup held, by which what is in none is told without asking a clock. */
const heldShape = z.strictObject({
  /** The revision of each trial in it, by its id. */
  trials: z.record(z.string(), wholeShape),
  /** A mark of each house formula, and one of the kitchen: they differ where the content does. */
  houses: z.record(z.string(), z.string()),
  kitchen: z.string(),
})
export type HeldInBackup = z.infer<typeof heldShape>

/** What was written down of a backup; null of one that was made before it was. */
export function readHeld(text: string | undefined): HeldInBackup | null {
  if (text === undefined) return null
  const read = heldShape.safeParse(JSON.parse(text))
  return read.success ? read.data : null
}

/**
 * A mark of what a record says, and of nothing that can be read back out of it: a taster who is erased is in none. FNV-1a over
 * its JSON in two lanes of 32 bits (the offset and prime of draft-eastlake-fnv, from memory; the second lane starts elsewhere).
 */
export function markOf(record: unknown): string {
  let [one, other] = [0x811c9dc5, 0x01234567]
  for (const letter of JSON.stringify(record)) {
    const code = letter.codePointAt(0) ?? 0
    one = Math.imul(one ^ code, 0x01000193)
    other = Math.imul(other ^ code, 0x01000193)
  }
  return `${(one >>> 0).toString(16)}-${(other >>> 0).toString(16)}`
}
