import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import type { BenchEntry } from './new-event.ts'
import { handsOffPress, stepPress } from './step-press.ts'

/** Something is waited for when it is due, or will be before anything else can be begun (seconds). */
const soonSeconds = 60

/** Where the hands go from the dough in front, and what that press logs. */
export interface GoTo {
  item: AgendaItem
  /** What the hands begin there. */
  begins: Pick<AgendaItem, 'step' | 'repeat'>
  press: BenchEntry[]
}

/**
 * The dough that waits for the hands, with the one press that ends the work in front and begins theirs: the wait it ends was
 * over, or is within a minute. Null while the work in front is not by hand, or nothing waits. A bake is never begun this way: it
 * is launched.
 */
export function goToPress(
  session: Session,
  front: AgendaItem,
  items: readonly AgendaItem[],
  runs: readonly StepRun[],
  log: readonly Standing[],
): GoTo | null {
  if (!front.handsOn) return null
  for (const item of items) {
    if (item.unit.id === front.unit.id || item.handsOn || item.units.length > 1) continue
    if ((item.lateSeconds ?? Number.NEGATIVE_INFINITY) < -soonSeconds) continue
    const begins = item.do === 'start' ? item : nextToBegin(item, runs)
    if (!begins || begins.step.kind === 'bake' || item.step.kind === 'bake') continue
    if (item.do === 'end' && item.step.endsBy.by !== 'clock') continue
    const ends = item.do === 'end' ? stepPress(session, item, log) : []
    const starts = stepPress(session, { ...begins, unit: item.unit, do: 'start' }, log)
    return { item, begins, press: [...handsOffPress(front), ...ends, ...starts] }
  }
  return null
}

/** What follows a wait on the very same dough or piece and has hands. */
function nextToBegin(item: AgendaItem, runs: readonly StepRun[]): StepRun | null {
  const line = runs.filter(({ unit }) => unit.id === item.unit.id)
  const at = line.findIndex(
    ({ step, repeat }) => step.id === item.step.id && repeat === item.repeat,
  )
  const next = line[at + 1]
  return next && next.startedAt === null && !next.skipped ? next : null
}
