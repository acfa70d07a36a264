import type { CivilClock } from '@/core/wording/words/civil-time.ts'

/**
 * By the process's own clock, set to the zone asked for: the language service takes a tenth of a whole command to give its
 * first date.
 */
export const processClock: CivilClock = (at, zone) => {
  process.env.TZ = zone
  const shown = new Date(at)
  return {
    year: shown.getFullYear(),
    month: shown.getMonth() + 1,
    day: shown.getDate(),
    hour: shown.getHours(),
    minute: shown.getMinutes(),
  }
}
