import { dayTime } from '@/core/wording/words/day-time.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

interface ClockWords {
  title: string
  text: string
}

const mend = 'Set the clock right; a time that was logged wrongly can be corrected in the log.'

/** A clock that stands before the device's own last entry (UTC ms, both). */
export function clockBehindText(last: number, now: number, zone: string): ClockWords {
  return {
    title: 'This device’s clock was moved',
    text: `It shows ${dayTime(now, now, zone)}, but the last entry was made at ${dayTime(last, now, zone)}. ${mend}`,
  }
}

/** A clock that jumped under an open page from one time (UTC ms) to another: what was running tells a false duration. */
export function clockJumpedText(from: number, to: number, zone: string): ClockWords {
  const span = durationText(Math.round(Math.abs(to - from) / 1000))
  const [way, wrong] = to > from ? ['on', 'too much'] : ['back', 'too little']
  return {
    title: `This device’s clock was moved ${way} by ${span}`,
    text: `It went from ${dayTime(from, to, zone)} to ${dayTime(to, to, zone)} at once. What was begun before that shows ${span} ${wrong}, and so would its entry. ${mend}`,
  }
}
