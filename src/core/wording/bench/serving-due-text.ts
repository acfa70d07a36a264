import type { ServingDue } from '@/core/session/serving-dues.ts'
import { minutesText } from '@/core/wording/words/duration-text.ts'

/** When a code is due at the table, in few words; `time` writes a moment of the session's clock. */
export function servingDueText(
  { outAt, servedAt, dueAt }: Pick<ServingDue, 'outAt' | 'servedAt' | 'dueAt'>,
  time: (at: number) => string,
): string {
  if (servedAt !== null) {
    const minutes = outAt === null ? '' : `, ${minutesText((servedAt - outAt) / 60_000, 0)} out`
    return `served ${time(servedAt)}${minutes}`
  }
  if (dueAt === null) return 'not out of the oven yet'
  return `due ${time(dueAt)}`
}

/** Why the key of the codes is covered, and who may see it. */
export function keyCoveredText(bakerTastes: boolean): string {
  return bakerTastes
    ? 'Whoever bakes tastes blind, so no code stands beside a letter here: print it face down for whoever plates, or let them look.'
    : 'A helper keeps the key, so it is not shown here: print it for them, face down, or let them look.'
}
