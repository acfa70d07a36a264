import { hourText } from '@/core/wording/words/civil-time.ts'
import { dayAndMonth } from '@/core/wording/words/day-time.ts'

const dayMilliseconds = 86_400_000

/** When something last happened, as one would say it: "today 14:52", "yesterday 9:05", else the date, "2 May 2026"; it stays in one line. */
export function dayText(at: number, now: number): string {
  return saidDay(at, now).replaceAll(' ', '\u00a0')
}

function saidDay(at: number, now: number): string {
  const date = new Date(at)
  const time = hourText({ hour: date.getHours(), minute: date.getMinutes() })
  if (date.toDateString() === new Date(now).toDateString()) return `today ${time}`
  if (date.toDateString() === new Date(now - dayMilliseconds).toDateString())
    return `yesterday ${time}`
  return `${dayAndMonth({ day: date.getDate(), month: date.getMonth() + 1 })} ${date.getFullYear()}`
}
