import type { AgendaItem } from './agenda.ts'

/**
 * By how many seconds something is past its moment at `now` (UTC ms), once it is past its tolerance too; null before that, as
 * what may wait so long is not late. What ends by a mark or a reading is not late before that is there.
 */
export function lateBy(
  { dueAt, latestAt, due }: Pick<AgendaItem, 'dueAt' | 'latestAt' | 'due'>,
  now: number,
): number | null {
  if (dueAt === null || latestAt === null || due === 'expected' || now <= latestAt) return null
  return (now - dueAt) / 1000
}
