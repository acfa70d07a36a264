import { writeFileSync } from 'node:fs'
import { searchedClock } from '@/core/clock-plan/clock-of-plan.ts'
import { type FoundWay, waysOfDay } from '@/core/clock-plan/other-days/ways-of-day.ts'
import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import { type Mend, momentMend, shownMends } from '@/core/clock-plan/search/mend.ts'
import { coveredTitle } from '@/core/seal/covered-title.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { previewNextSession } from '@/core/session/preview-sessions.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { calendarFile } from '@/core/wording/plan/calendar-file.ts'
import {
  clockPlanSentences,
  culpritSentence,
  marksSentence,
  mendText,
  nightSentence,
} from '@/core/wording/plan/clock-plan-text.ts'
import { dayWayText } from '@/core/wording/plan/day-way-text.ts'
import { runRowText, runWaitText } from '@/core/wording/plan/run-sheet-text.ts'
import { wallClock } from '@/core/wording/words/civil-moment.ts'
import { clockTime } from '@/core/wording/words/civil-time.ts'
import { dateText } from '@/core/wording/words/date-text.ts'
import { notWrittenText } from './not-written.ts'
import { planAsAsked } from './plan-as-asked.ts'
import { planStops, stopsText } from './plan-stops.ts'
import { processClock } from './process-clock.ts'
import { readTrial } from './read-trial.ts'
import { textTable } from './text-table.ts'
import { CommandTrouble } from './trouble.ts'
import { jsonOption, type Verb } from './verb.ts'
import { wrapped } from './wrapped.ts'

const searchMilliseconds = 2000

const nothingFound =
  'No plan was found, not even with waits far off. Take more time, fewer flights or levels, or another order.'

/** The next session's day by the clock: who does what when, backwards from when people eat or forwards from when one starts. */
export const clockVerb: Verb = {
  summary: 'plan the day by the clock, as a run sheet and for a calendar',
  about:
    'The next session’s day for the plan’s hands, oven and waits: equal ages at baking and equal minutes from oven to mouth first, then the shortest day. Times are those of the plan’s zone; without --eat or --start they count from the first hand. Tells no level.',
  options: {
    eat: { type: 'string', value: 'DAYTHOUR', help: 'when people eat, such as 2026-12-05T18:00' },
    start: { type: 'string', value: 'DAYTHOUR', help: 'when the first hand starts' },
    quiet: {
      type: 'string',
      value: 'HOURS',
      help: 'no hands then: 23:00-6:30 unless said, or none',
    },
    ics: { type: 'string', value: 'OUT', help: 'write a calendar file with alarms' },
    json: jsonOption,
  },
  answer: async (asked) => {
    const whole = readTrial(asked.file)
    const plan = planAsAsked(asked, planInForce(whole))
    const next = previewNextSession(plan, whole.trial.seed, whole.sessions)
    if (!next.ok)
      throw new CommandTrouble(
        `${asked.file}: no session can be dealt from this plan; check says why.`,
      )
    const { session } = next
    // A sealed trial's own words may name a level, and so may what is to be mended.
    const covered = sealed(whole)
    const question = covered ? coveredTitle(plan.question, plan.levels) : plan.question
    const wall = wallClock(plan.zone, processClock)
    const within = (share: number) => ({
      clock: () => performance.now(),
      milliseconds: searchMilliseconds * share,
    })
    const { clock, marks, rows, originAt } = searchedClock(plan, session, wall, within(1))
    const known = momentMend(clock?.mends ?? [])
    const ways = waysOfDay(plan, session, wall, within(1), known)
    if (!clock) throw new CommandTrouble([nothingFound, ...waysText(ways, plan)].join('\n\n'))
    const out = asked.text('ics')
    if (out !== undefined) {
      if (originAt === null)
        throw new CommandTrouble('--ics: a calendar needs a day; name --eat or --start too.')
      const calendar = { trialId: whole.trial.id, session: session.number, rows, originAt }
      const text = calendarFile({ ...calendar, question, writtenAt: Date.now() })
      try {
        writeFileSync(out, text)
      } catch (failure) {
        throw new CommandTrouble(`--ics ${notWrittenText(out, failure)}`)
      }
    }
    const stops = covered ? [] : planStops(whole)
    const momentOf = momentsFrom(originAt, plan.zone)
    if (asked.flag('json')) {
      const { begins: _, ...found } = clock
      return JSON.stringify(
        {
          ...found,
          marks,
          zone: plan.zone,
          originAt,
          rows,
          ways: ways.map(withoutTimes),
          toMend: stops,
        },
        null,
        2,
      )
    }
    const nameOf = doughOf(session.dealt.doughOrder)
    const split = nightSentence(clock, plan, nameOf)
    return [
      question,
      ...stopsText(stops),
      wrapped(clockPlanSentences(clock, plan).join(' ')),
      ...(split === null ? [] : [wrapped(split)]),
      ...(marks ? [wrapped(marksSentence(marks, nameOf))] : []),
      ...(clock.fits ? [] : [wrapped(culpritSentence(clock.culprits, plan))]),
      ...mendsText(clock.mends, plan),
      ...waysText(ways, plan),
      textTable(['', 'When', 'Do', 'Then wait'], rows.map(rowOf(momentOf)), [
        false,
        true,
        false,
        false,
      ]),
    ].join('\n\n')
  },
}

/** The smallest mends, each alone; nothing where the day needs none. */
function mendsText(mends: readonly Mend[], plan: Plan): string[] {
  if (mends.length === 0) return []
  const lines = shownMends(mends).map((mend) => wrapped(mendText(mend, plan), '- '))
  return [['What would mend it, each alone:', ...lines].join('\n')]
}

const withoutTimes = ({ toKeep: _, ...found }: FoundWay) => found

/** Days that go and differ in kind from the one that was asked for; nothing where there are none. */
function waysText(ways: readonly FoundWay[], plan: Plan): string[] {
  const others = ways.filter(({ way }) => way.way !== 'as-asked')
  if (others.length === 0) return []
  const lines = others.map((found) => {
    const { title, said } = dayWayText(found, plan, processClock)
    return wrapped(`- ${title}. ${said.join(' ')}`)
  })
  return [['Days of another kind that go too:', ...lines].join('\n')]
}

/** A dough by its place in the day’s order, which tells no level. */
const doughOf = (order: readonly string[]) => (batchId: string) =>
  `dough ${order.indexOf(batchId) + 1}`

function rowOf(momentOf: (seconds: number) => string) {
  return (row: RunRow): string[] => [
    '[ ]',
    momentOf(row.beginSeconds),
    runRowText(row),
    runWaitText(row),
  ]
}

/** Wall-clock times with the date where it changes; from 0:00:00 where no day was named. Seconds are shown only there. */
function momentsFrom(originAt: number | null, zone: string): (seconds: number) => string {
  let shown = ''
  return (seconds) => {
    if (originAt === null) {
      const two = (value: number) => String(Math.floor(value)).padStart(2, '0')
      return `${Math.floor(seconds / 3600)}:${two((seconds % 3600) / 60)}:${two(seconds % 60)}`
    }
    const at = originAt + seconds * 1000
    const date = dateText(at, zone, processClock)
    const time = clockTime(at, zone, processClock)
    const text = date === shown ? time : `${date} ${time}`
    shown = date
    return text
  }
}
