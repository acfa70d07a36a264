import { ovenBakes } from '@/core/clock-plan/oven-bake.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** A piece, or a dough baked whole, that is in the oven: since when, and when it is due out (UTC ms; a guess where a mark ends it). */
export interface InOven {
  item: AgendaItem
  inAt: number
  outAt: number
  /** Its place in the load, counted from 1. */
  place: number
  /** Half of its time: when a baker who turns turns it. */
  halfAt: number
}

/** The oven as the log has it: what is inside, soonest out first; what goes in next; how many places are free. */
export interface OvenNow {
  inside: InOven[]
  next: AgendaItem | null
  freePlaces: number
}

/** What the oven holds and what is to go in next, from what is next to do for every dough and piece. */
export function ovenNow(
  session: Session,
  plan: Plan,
  items: readonly AgendaItem[],
  runs: readonly StepRun[],
): OvenNow {
  const bakes = new Map(ovenBakes(plan, session, runs).map((bake) => [bake.id, bake]))
  const inside = items.flatMap((item): InOven[] => {
    if (item.step.kind !== 'bake' || item.do !== 'end' || item.dueAt === null) return []
    const run = runs.find(
      ({ unit, step, repeat }) =>
        unit.id === item.unit.id && step.id === item.step.id && repeat === item.repeat,
    )
    const inAt = run?.startedAt ?? item.dueAt
    const place = (bakes.get(item.unit.id)?.place ?? 0) + 1
    return [{ item, inAt, outAt: item.dueAt, place, halfAt: (inAt + item.dueAt) / 2 }]
  })
  const taken = inside.reduce((sum, { item }) => sum + (bakes.get(item.unit.id)?.places ?? 1), 0)
  return {
    inside: inside.toSorted((one, other) => one.outAt - other.outAt),
    next: items.find(({ step, do: what }) => step.kind === 'bake' && what === 'start') ?? null,
    freePlaces: Math.max(0, plan.placesPerLoad - taken),
  }
}
