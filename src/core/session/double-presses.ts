import type { Event } from './event-record.ts'

/** Two entries of two devices that say the same of the same thing: one of them is to be kept. */
export interface DoublePress {
  first: Event
  second: Event
}

/** Presses that happen once to a thing in each repeat; a weight, a note or a photo may well come twice. */
const once = new Set<Event['kind']>([
  ...(['step-started', 'hands-off', 'step-stopped', 'step-skipped'] as const),
  ...(['bake-in', 'bake-out', 'browned', 'served', 'present', 'declined', 'left'] as const),
  // The lock is no press: each notebook writes it of itself beside the first mix.
  ...(['tasting-closed', 'unsealed', 'day-closed', 'made-again'] as const),
])

/** What two presses must share to be the same press. */
function pressOf(event: Event): string {
  const step = 'stepId' in event ? (event.stepId ?? '') : ''
  const repeat = 'repeat' in event ? (event.repeat ?? 1) : 1
  return [event.kind, event.sessionId, event.about.kind, event.about.id, step, repeat].join(' ')
}

/**
 * The presses that two devices both made, in the order of their moments. What a correction replaced or took back is no press
 * any more, so that taking one of the two back ends the matter.
 */
export function doublePresses(events: readonly Event[]): DoublePress[] {
  const replaced = new Set(events.flatMap(({ corrects }) => corrects ?? []))
  const first = new Map<string, Event>()
  const standing = events
    .filter((event) => once.has(event.kind) && !replaced.has(event.id))
    .toSorted((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
  return standing.flatMap((second) => {
    const earlier = first.get(pressOf(second))
    if (!earlier) first.set(pressOf(second), second)
    return earlier && earlier.device !== second.device ? [{ first: earlier, second }] : []
  })
}
