import { hourText } from '@/core/wording/words/civil-time.ts'

const dayMilliseconds = 86_400_000

/** When something last happened, as one would say it: "today 14:52", "yesterday 9:05", else the date. */
export function dayText(at: number, now: number): string {
  const date = new Date(at)
  const time = hourText({ hour: date.getHours(), minute: date.getMinutes() })
  if (date.toDateString() === new Date(now).toDateString()) return `today ${time}`
  if (date.toDateString() === new Date(now - dayMilliseconds).toDateString())
    return `yesterday ${time}`
  return new Intl.DateTimeFormat('en-GB', {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  }).format(date)
}
