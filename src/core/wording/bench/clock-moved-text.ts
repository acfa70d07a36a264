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

/**
 * A clock that jumped under an open page from one time (UTC ms) to another: what was running tells a false duration. Back it
 * goes by being set alone; forwards it also goes for a device that slept, whose steady clock stood, and then it is right.
 */
export function clockJumpedText(from: number, to: number, zone: string): ClockWords {
  const span = durationText(Math.round(Math.abs(to - from) / 1000))
  const went = `It went from ${dayTime(from, to, zone)} to ${dayTime(to, to, zone)} at once.`
  if (to < from)
    return {
      title: `This device’s clock was moved back by ${span}`,
      text: `${went} What was begun before that shows ${span} too little, and so would its entry. ${mend}`,
    }
  return {
    title: `This device’s clock went on by ${span}, or this device slept`,
    text: `${went} If the device slept, all times are right. If the clock was set, what was begun before that shows ${span} too much, and so would its entry. ${mend}`,
  }
}
