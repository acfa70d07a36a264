import type { Standing } from '@/core/session/effective-events.ts'

/** The entries of a log in its order that one press logged with `target`: the same moment, running numbers that follow each other. */
export function samePress(events: readonly Standing[], target: Standing): Standing[] {
  const press = [target]
  // In the log's order those of one device stand as they were written, though another's may stand between them.
  for (let at = events.length - 1; at >= 0; at -= 1) {
    const [event, next] = [events[at], press.at(-1)]
    if (event?.device !== target.device || !next || event.count >= next.count) continue
    if (event.count !== next.count - 1 || event.at !== target.at) break
    press.push(event)
  }
  return press.filter((event) => event.kind !== 'lock')
}
