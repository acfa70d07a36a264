import type { ReportSection } from '@/core/report/report-block.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import { failuresOf } from '@/core/session/failures.ts'
import { temperaturesOf } from '@/core/session/temperatures.ts'
import { degreesFigure, ownDegreeSign, plainDegrees } from '@/core/units/temperature-text.ts'
import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import { planInForce, planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { departuresInShort } from '@/core/wording/bench/departures-in-short.ts'
import { methodLine } from '@/core/wording/house/house-text.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'

/** The day: the method in a line, and each session with its hours and how warm the doughs were. */
export function daySection(whole: WholeTrial, clock: CivilClock): ReportSection {
  const plan = planInForce(whole)
  const method = plan.steps.map((step) => methodLine(step, plainDegrees)).join(' ')
  const sessions = inOrder(whole).map((session) => {
    const events = eventsOfSession(whole.events, session.id)
    const worked = events.filter(({ kind }) => bench.has(kind)).map(({ at }) => at)
    const when = hoursText(worked.length === 0 ? [session.createdAt] : worked, session.zone, clock)
    const warm = temperaturesOf(events, 'dough').map(({ celsius }) => celsius)
    const added = session.number > session.plannedSessions ? '; added after the planned ones' : ''
    return {
      term: `Session ${session.number}`,
      text: `${when}; ${countText(session.batches.length, 'dough')}${warmText(warm)}${added}.`,
    }
  })
  return {
    id: 'page-day',
    title: 'The day',
    blocks: [
      {
        kind: 'facts',
        rows: [...(method === '' ? [] : [{ term: 'Method', text: method }]), ...sessions],
      },
      ...(sessions.length === 0
        ? [{ kind: 'text' as const, text: 'Nothing has been made yet.' }]
        : []),
    ],
  }
}

/** "4 September 2026, 9:10 to 15:40", or with both days where it went over a night. */
function hoursText(stamps: readonly number[], zone: string, clock: CivilClock): string {
  const [from, to] = [Math.min(...stamps), Math.max(...stamps)]
  const day = dateText(from, zone, clock)
  if (from === to) return day
  const hours = (at: number) => clockTime(at, zone, clock)
  return dateText(to, zone, clock) === day
    ? `${day}, ${hours(from)} to ${hours(to)}`
    : `${day}, ${hours(from)}, to ${dateText(to, zone, clock)}, ${hours(to)}`
}

/** What is logged while doughs are worked. */
const bench: ReadonlySet<string> = new Set([
  'step-started',
  'step-stopped',
  'weighed',
  'bake-in',
  'bake-out',
])

function warmText(celsius: readonly number[]): string {
  if (celsius.length === 0) return ''
  const [least, most] = [Math.min(...celsius), Math.max(...celsius)].map((one) =>
    degreesFigure(one, 1),
  )
  return `, at ${least === most ? least : `${least} to ${most}`} ${ownDegreeSign()}`
}

/** The departures that may have moved something, in few sentences, and every failure. */
export function departedSection(whole: WholeTrial): ReportSection {
  const items = departuresInShort(
    inOrder(whole).map((session) => ({
      session,
      plan: planOfSession(whole, session),
      departures: departedInSession(whole, session),
    })),
  )
  const failed = whole.sessions.reduce(
    (sum, session) => sum + failuresOf(session, eventsOfSession(whole.events, session.id)).length,
    0,
  )
  const said =
    failed === 0
      ? 'No failure was logged.'
      : `${asSentenceStart(countText(failed, 'failure'))} ${failed === 1 ? 'was' : 'were'} logged; the appendix names them by level.`
  return {
    id: 'page-departed',
    title: 'Done differently',
    blocks: [
      {
        kind: 'list',
        items: [
          ...(items.length === 0 ? ['The log shows no departure from the plan.'] : items),
          said,
        ],
      },
    ],
  }
}

const inOrder = ({ sessions }: WholeTrial) => sessions.toSorted((a, b) => a.number - b.number)
