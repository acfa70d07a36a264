import type { DayAsked } from '@/core/clock-plan/problem-of-day.ts'
import type { DayProblem } from '@/core/clock-plan/search/day-problem.ts'
import type { WorkPart } from '@/core/clock-plan/work-part.ts'
import type { Unit } from '@/core/session/line.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { LateWait } from './late-waits.ts'
import type { MadeAnew } from './solve-anew.ts'
import { type WayOn, wayOn } from './way-on.ts'

/** The others wait as long as the late one: which, how much longer, by which entries, and how the day then goes on. */
export interface OthersWait extends WayOn {
  units: Unit[]
  moreSeconds: number
  press: BenchEntry[]
}

const halfMinutes = (seconds: number) => Math.ceil(seconds / 30) * 30

interface Asked {
  asked: DayAsked
  behind: ReadonlyMap<string, number>
  open: readonly WorkPart[]
  late: readonly LateWait[]
  originAt: number
  on: { made: MadeAnew; problem: DayProblem }
  at: (more: ReadonlyMap<string, number>) => { made: MadeAnew; problem: DayProblem }
  session: Session
}

/** The others wait so much longer at the same step, where they still can, the worst lateness first that it mends. */
export function othersWait(of: Asked): OthersWait | null {
  const { asked, open, late, originAt, on, at, behind } = of
  const before = wayOn(on.problem, on.made, originAt)
  const isOpen = new Set(open.map(({ id }) => id))
  for (const { batchId, stepId, repeat, seconds } of late) {
    const own = asked.parts.filter(
      (part) =>
        part.what === 'work' &&
        part.step.id === stepId &&
        part.repeat === repeat &&
        part.step.endsBy.by === 'clock' &&
        part.step.kind !== 'bake' &&
        !part.forAll,
    )
    const lateParts = own.filter((part) => part.batchId === batchId)
    const lateMore = Math.max(0, ...lateParts.map(({ id }) => behind.get(id) ?? 0))
    const wanted = halfMinutes(lateMore + seconds)
    const others = own.filter(
      ({ id, batchId: other }) =>
        other !== batchId &&
        !late.some(
          (one) => one.batchId === other && one.stepId === stepId && one.seconds > seconds - 60,
        ) &&
        (behind.get(id) ?? 0) < wanted - 30 &&
        asked.parts.some(({ id: next, after }) =>
          after.some(({ from }) => from === id && isOpen.has(next)),
        ),
    )
    if (others.length === 0) continue
    const more = new Map([...behind, ...others.map(({ id }) => [id, wanted] as const)])
    const made = at(more)
    const way = wayOn(made.problem, made.made, originAt)
    const gained =
      before.ageSpreadSeconds +
      before.mouthSpreadSeconds -
      way.ageSpreadSeconds -
      way.mouthSpreadSeconds
    if (made.made.laid || gained < 60) continue
    const units = others.flatMap(({ unitIds }) => unitIds.map((id) => unitOf(of.session, id)))
    return {
      ...way,
      ...{ units, moreSeconds: wanted },
      press: units.map((about) => ({
        ...{ kind: 'wait-changed', about, stepId, repeat, moreSeconds: wanted },
      })),
    }
  }
  return null
}

const unitOf = ({ batches }: Session, id: string): Unit => ({
  kind: batches.some((batch) => batch.id === id) ? 'batch' : 'piece',
  id,
})
