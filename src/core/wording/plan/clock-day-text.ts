import type { ClockOfPlan } from '@/core/clock-plan/clock-of-plan.ts'
import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import type { WaitRow } from '@/core/clock-plan/waits-of-day.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massText, massUnit } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { ownDegreeSign } from '@/core/units/temperature-text.ts'
import { type PrefermentToFeed, prefermentsToFeed } from '@/core/weighing/preferments-to-feed.ts'
import { type CivilClock, civilTime, hourText } from '@/core/wording/words/civil-time.ts'
import { durationText, minutesBetween } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday']
const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September'],
  ...['October', 'November', 'December'],
]

const two = (value: number) => String(Math.floor(value)).padStart(2, '0')

/** Moments of one day as they are written: "07:30", near the oven "11:13:45"; from the first hand, "0:30", where none is fixed. */
export interface DayMoments {
  time: (seconds: number) => string
  /** "Friday, 4 December"; empty where no moment is fixed. */
  day: (seconds: number) => string
}

export function dayMoments(
  originAt: number | null,
  zone: string,
  clock: CivilClock = civilTime,
): DayMoments {
  if (originAt === null)
    return {
      time: (seconds) =>
        `${Math.floor(seconds / 3600)}:${two((seconds % 3600) / 60)}${seconds % 60 === 0 ? '' : `:${two(seconds % 60)}`}`,
      day: () => '',
    }
  const at = (seconds: number) => originAt + seconds * 1000
  return {
    time: (seconds) => {
      const { hour, minute } = clock(at(seconds), zone)
      const rest = Math.floor(at(seconds) / 1000) % 60
      return hourText({ hour, minute, ...(rest === 0 ? {} : { second: rest }) })
    },
    day: (seconds) => {
      const { year, month, day } = clock(at(seconds), zone)
      const weekday = weekdays[new Date(Date.UTC(year, month - 1, day)).getUTCDay()]
      return `${weekday}, ${day} ${months[month - 1]}`
    },
  }
}

/**
 * The day in a sentence, named day by day: "Friday, 4 December: Feed at 20:00. Saturday, 5 December: first Mix at 07:30, done
 * at 13:30; one pair of hands, 2 pieces at once."
 */
export function daySentence(found: ClockOfPlan, plan: Plan, clock: CivilClock = civilTime): string {
  const { rows, originAt, picture } = found
  const moments = dayMoments(originAt, plan.zone, clock)
  const days = new Map<string, RunRow[]>()
  for (const row of rows) {
    const day = moments.day(row.beginSeconds)
    days.set(day, [...(days.get(day) ?? []), row])
  }
  const end = picture.toSeconds
  const parts = [...days].map(([day, own], at, all) => {
    const names = [...new Set(own.map(({ name }) => name))]
    const [first] = own
    const begun = first ? `${first.name} at ${moments.time(first.beginSeconds)}` : ''
    const last = at === all.length - 1 ? `, all done at ${moments.time(end)}` : ''
    const more = names.length > 1 && at < all.length - 1 ? ` to ${names.at(-1)}` : ''
    const text = `${at === all.length - 1 ? 'first ' : ''}${begun}${more}${last}`
    return day === '' ? asSentenceStart(`${text} on the day’s own clock`) : `${day}: ${text}`
  })
  const hands =
    plan.pairsOfHands === 1 ? 'one pair of hands' : `${plan.pairsOfHands} pairs of hands`
  return `${parts.join('. ')}; ${hands}, ${countText(plan.placesPerLoad, 'piece')} in the oven at once.`
}

const minutes = (seconds: number) => decimalText(seconds / 60, seconds % 60 === 0 ? 0 : 1)

/** A wait as planned, in minutes: "20 ± 5", by a mark "60 to 100", and over levels or loads "30 to 45 ± 5". */
export function plannedWaitText(row: WaitRow): string {
  const { least, most } = row.plannedSeconds
  if (row.byMark) return `${minutes(least)} to ${minutes(most + row.lateSeconds)}`
  const planned = least === most ? minutes(least) : `${minutes(least)} to ${minutes(most)}`
  if (row.earlySeconds === row.lateSeconds) return `${planned} ± ${minutes(row.lateSeconds)}`
  return `${planned}, −${minutes(row.earlySeconds)} +${minutes(row.lateSeconds)}`
}

/** A wait as planned in a sentence: in minutes up to two hours, else as it is said. */
function plannedWords(row: WaitRow): string {
  const { least, most } = row.plannedSeconds
  return most < 7200
    ? `${plannedWaitText(row)} min`
    : minutesBetween({ low: least / 60, high: most / 60 }, 0)
}

/** A wait as it comes out, in minutes. */
export function comesOutText({ comesOut: { least, most } }: WaitRow): string {
  return least === most ? minutes(least) : `${minutes(least)} to ${minutes(most)}`
}

/** What is wrong with the waits, in a sentence with the dough and its minutes; null where all are within their tolerance. */
export function offSentence(
  rows: readonly WaitRow[],
  doughOf: (batchId: string) => string,
): string | null {
  const off = rows.flatMap((row) => row.off.map((each) => ({ ...each, row })))
  const [worst] = off.toSorted((one, other) => over(other) - over(one))
  if (!worst) return null
  const rest =
    off.length > 1
      ? ` ${asSentenceStart(countText(off.length - 1, 'other wait'))} ${off.length === 2 ? 'is' : 'are'} off too.`
      : ''
  return `${doughOf(worst.batchId)} would wait ${durationText(worst.seconds)} after ${worst.row.name}: ${plannedWords(worst.row)} was planned.${rest}`
}

const over = ({ seconds, row }: { seconds: number; row: WaitRow }) =>
  Math.max(seconds - row.plannedSeconds.most, row.plannedSeconds.least - seconds)

/** What is read where a row of the run sheet is done, as a blank with its unit; empty where nothing is. */
export function readingOf({ do: what }: RunRow, kind: string): string {
  if (what === 'pull') return massUnit()
  if (what === 'launch') return `${ownDegreeSign()} floor`
  if (kind === 'mix') return ownDegreeSign()
  if (kind === 'proof' || kind === 'cold-proof') return 'rise %'
  return kind === 'serve' ? ownDegreeSign() : ''
}

/** What lies on the table before the day: in one list, what to charge, print and ask. */
export function beforeTheDay(plan: Plan, tubs: number): string[] {
  const feeds = plan.steps.filter(({ kind }) => kind === 'feed').map(({ name }) => name)
  const { helpers = [] } = plan.day ?? {}
  return [
    `${asSentenceStart(countText(tubs, 'tub'))}, dry and weighed empty, each with its label.`,
    ...prefermentsToFeed(plan).map(fedText),
    ...(feeds.length > 0 ? [`Fed in time: ${listText(feeds)}.`] : []),
    'Shopping list, weigh sheet, labels and run sheet printed.',
    'Phone, scale and thermometer charged; the calendar file taken in, so that alarms ring while the page sleeps.',
    plan.pairsOfHands === 1 && helpers.length === 0
      ? 'Nobody helps: one pair of hands does it all.'
      : `${asSentenceStart(countText(plan.pairsOfHands, 'pair'))} of hands all day${helpers.length > 0 ? ', and who helps by the hour:' : '.'}`,
    ...helpersText(plan),
  ]
}

/** A preferment as it is fed for all doughs: "Poolish, fed for all doughs: 160 g Bread flour and 160 g Water, 320 g in all." */
function fedText({ name, rows, totalGrams }: PrefermentToFeed): string {
  const grams = (value: number) => massText(value, value < 10 ? 2 : 0)
  const parts = rows.map((row) => `${grams(row.grams)} ${row.name}`)
  return `${name}, fed for all doughs: ${listText(parts)}, ${grams(totalGrams)} in all.`
}

/** When each helper is there: "Helper 1: Saturday, 5 December, 14:00 to 17:00." */
export function helpersText(
  { day, zone }: Pick<Plan, 'day' | 'zone'>,
  clock: CivilClock = civilTime,
): string[] {
  return (day?.fixed ? (day.helpers ?? []) : []).map(({ fromAt, untilAt }, at) => {
    const moments = dayMoments(fromAt, zone, clock)
    const seconds = (untilAt - fromAt) / 1000
    const ends = moments.day(seconds) === moments.day(0) ? '' : `${moments.day(seconds)}, `
    return `Helper ${at + 1}: ${moments.day(0)}, ${moments.time(0)} to ${ends}${moments.time(seconds)}.`
  })
}
