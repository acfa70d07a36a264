import type { Standing } from '@/core/session/effective-events.ts'

/** The entries that one press logged together with `target`: the same moment and running numbers that follow each other. */
export function samePress(events: readonly Standing[], target: Standing): Standing[] {
  const press = [target]
  const earlier = events
    .filter((event) => event.device === target.device && event.count < target.count)
    .toSorted((one, other) => other.count - one.count)
  for (const event of earlier) {
    const next = press.at(-1)
    if (!next || event.count !== next.count - 1 || event.at !== next.at) break
    press.push(event)
  }
  return press.filter((event) => event.kind !== 'lock')
}
