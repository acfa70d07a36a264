import type { ServingDue } from '@/core/session/serving-dues.ts'

/** When a code is due at the table, in few words; `time` writes a moment of the session's clock. */
export function servingDueText(
  { outAt, servedAt, dueAt }: Pick<ServingDue, 'outAt' | 'servedAt' | 'dueAt'>,
  time: (at: number) => string,
): string {
  if (servedAt !== null) {
    const minutes = outAt === null ? '' : `, ${Math.round((servedAt - outAt) / 60_000)} min out`
    return `served ${time(servedAt)}${minutes}`
  }
  if (dueAt === null) return 'not out of the oven yet'
  return `due ${time(dueAt)}`
}
