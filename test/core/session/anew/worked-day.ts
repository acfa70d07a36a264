import { plannedDay } from '@/core/clock-plan/planned-day.ts'
import { agenda } from '@/core/session/agenda.ts'
import { dayAnew } from '@/core/session/anew/day-anew.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Unit } from '@/core/session/line.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madePlan, madeStep } from '../../made-plan.ts'
import { madeLog } from '../made-events.ts'
import { madeSession } from '../made-session.ts'

export const begun = Date.UTC(2026, 10, 21, 6)
const noBlocks = () => ({ blocks: [] })

/** Four doughs that are mixed, rest for an hour and go into the oven one after another. */
export const plan = madePlan({
  flights: 1,
  warmUpPiece: false,
  steps: [
    madeStep('mix', 'mix', { handsSeconds: 1200 }),
    madeStep('rest', 'rest', { handsSeconds: 0, waitSeconds: 3600, uses: [] }),
    madeStep('shape', 'ball', { handsSeconds: 120, waitSeconds: 1800 }),
    madeStep('bake', 'bake', { handsSeconds: 20, waitSeconds: 240, pullSeconds: 15 }),
  ],
  placesPerLoad: 1,
})

/** A day at the bench: `until` so many seconds from its begin all is done when it is due, but what `holds` keeps waiting. */
export function dayUntil(
  { plan: planned, seed = 42 }: { plan: Plan; seed?: number },
  until: number,
  holds: (unit: Unit, stepId: string, what: string) => number = () => 0,
) {
  const session = madeSession(planned, [], seed)
  const day = plannedDay(planned, session)
  const { events, log } = madeLog()
  const press = (entry: BenchEntry, at: number) => {
    const { about, at: _, ...bare } = entry
    log(bare as Parameters<typeof log>[0], { about, at: begun + at * 1000 })
  }
  let now = 0
  for (;;) {
    const items = agenda(session, planned, effectiveEvents(events), begun + now * 1000, day)
      .map((item) => {
        const due = item.dueAt === null ? now : Math.max(now, (item.dueAt - begun) / 1000)
        return { item, at: due + holds(item.unit, item.step.id, item.do) }
      })
      .toSorted((one, other) => one.at - other.at)
    const [first] = items
    if (!first || first.at > until) break
    now = first.at
    const { unit: about, step, repeat } = first.item
    const launch = first.item.do === 'start' && step.kind === 'bake'
    const at = launch ? now + step.handsSeconds : now
    const kind = first.item.do === 'start' ? 'step-started' : 'step-stopped'
    press({ kind, about, stepId: step.id, repeat }, at)
  }
  const anew = (at: number) =>
    dayAnew({
      ...{ session, plan: planned, day, events: effectiveEvents(events) },
      ...{ inTime: noBlocks, now: begun + at * 1000 },
    })
  /** What the Bench would ask for at a moment. */
  const bench = (at: number) => {
    const effective = effectiveEvents(events)
    return {
      items: agenda(session, planned, effective, begun + at * 1000, day),
      runs: stepRuns(session, planned, effective),
    }
  }
  return { session, day, press, anew, bench }
}
