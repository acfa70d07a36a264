import { hourText } from './civil-time.ts'

/** A time of day from minutes after midnight, as the person reads it: 1110 is "18:30", by 12 hours "6:30 pm". */
export const minutesOfDayText = (minutes: number) =>
  hourText({ hour: Math.floor(minutes / 60), minute: minutes % 60 })

/** That what was typed in a field is no time of day, and the mend. */
export const noTimeOfDayText = (label: string) =>
  `${label}: write the time of day, such as 14:05 or 2:05 pm.`

/** As what time of day a text was taken that is typed in another form; nothing where it stands as it is read back. */
export const readAsText = (typed: string, minutes: number) =>
  typed === minutesOfDayText(minutes) ? undefined : `Read as ${minutesOfDayText(minutes)}.`
