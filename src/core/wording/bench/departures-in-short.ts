import type { Departure } from '@/core/session/departure.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText, countWord, listText } from '@/core/wording/words/list-text.ts'
import { departureText } from './departure-text.ts'

/** What departed in one session, with the plan that it ran. */
export interface DepartedInSession {
  session: Session
  plan: Plan
  departures: readonly Departure[]
}

/** How many of a kind are told one by one; more are counted. */
const most = 3

/**
 * What was done differently, in few sentences: wrong weights first, since they move the level itself, then steps left out or
 * done once more, then changes of order and waits, each kind counted by session.
 */
export function departuresInShort(sessions: readonly DepartedInSession[]): string[] {
  const of = <What extends Departure['what']>(what: What) =>
    sessions.map((one) => ({
      ...one,
      found: one.departures.filter(
        (departure): departure is Extract<Departure, { what: What }> => departure.what === what,
      ),
    }))
  const told = (what: Departure['what'], many: (count: number) => string) => {
    const all = of(what).flatMap(({ session, plan, found }) =>
      found.map(
        (departure) =>
          `Session ${session.number}. ${departureText(departure, plan, session, { levels: true })}`,
      ),
    )
    return all.length <= most ? all : [many(all.length)]
  }
  return [
    ...told('weight', (count) => `${counted(count, 'weight')} off by more than one percent.`),
    ...told('step-missing', (count) => `${counted(count, 'step')} skipped.`),
    ...told('step-extra', (count) => `${counted(count, 'step')} done more often than planned.`),
    ...inOtherOrder('The doughs were taken', of('dough-order')),
    ...inOtherOrder('The pieces were baked', of('bake-order')),
    ...waits(of('wait')),
  ]
}

const counted = (count: number, one: string) =>
  `${asSentenceStart(countText(count, one))} ${count === 1 ? 'was' : 'were'}`

type Found<What extends Departure['what']> = DepartedInSession & {
  found: Extract<Departure, { what: What }>[]
}

function inOtherOrder(
  what: string,
  sessions: readonly Found<'dough-order' | 'bake-order'>[],
): string[] {
  const parts = bySession(sessions, (found) =>
    countText(
      found.reduce((sum, { swaps }) => sum + swaps, 0),
      'swap',
    ),
  )
  return parts === '' ? [] : [`${what} in another order than drawn: ${parts}.`]
}

function waits(sessions: readonly Found<'wait'>[]): string[] {
  const all = sessions.flatMap(({ found }) => found)
  if (all.length === 0) return []
  const off = all.map(({ doneSeconds, plannedSeconds }) => Math.abs(doneSeconds - plannedSeconds))
  const parts = bySession(sessions, (found) => countWord(found.length))
  const verb = all.length === 1 ? 'was' : 'were'
  return [
    `${asSentenceStart(countText(all.length, 'wait'))} ${verb} out of tolerance, by up to ${durationText(Math.max(...off))} from what was planned: ${parts}.`,
  ]
}

/** "two in session 1, four in session 3"; empty where there is none. */
function bySession<What extends Departure['what']>(
  sessions: readonly Found<What>[],
  say: (found: Found<What>['found']) => string,
): string {
  return listText(
    sessions.flatMap(({ session, found }) =>
      found.length === 0 ? [] : [`${say(found)} in session ${session.number}`],
    ),
  )
}
