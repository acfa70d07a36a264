import { fractionValue } from './written-number.ts'

const unitSeconds = { s: 1, min: 60, h: 3600, day: 86400 } as const
export type TimeUnit = keyof typeof unitSeconds

const spellings: Readonly<Record<TimeUnit, string>> = {
  s: 's sec secs second seconds sek sekunde sekunden seconde secondes secondo secondi',
  min: 'min mins minute minutes minuten minuti minuto',
  h: 'h hr hrs hour hours std stunde stunden heure heures ora ore',
  day: 'd day days tag tage tagen jour jours giorno giorni',
}

/** Spellings of each unit of time, in lower case: English, German, French and Italian. */
export const timeSpellings: Readonly<Record<string, TimeUnit>> = Object.fromEntries(
  Object.entries(spellings).flatMap(([unit, words]) =>
    words.split(' ').map((word) => [word, unit as TimeUnit]),
  ),
)

/** A length of time in seconds. */
export function secondsFrom(value: number, unit: TimeUnit): number {
  return value * unitSeconds[unit]
}

const digits = String.raw`(?:\d+\s+)?\d+\/\d+|\d*[¼½¾]|\d+(?:[.,]\d+)?`
const part = new RegExp(String.raw`^\s*(${digits})\s*(\p{L}+)\.?\s*(?:and|und|et|e|,)?\s*`, 'iu')
const minutesBehind = /^\s*(\d{1,2})\s*$/u
const smaller: Readonly<Record<TimeUnit, number>> = { s: 0, min: 1, h: 2, day: 3 }

/**
 * A length of time as people type it, with its unit: "14h", "45 min", "1 h 20 min", "1h20", "1 1/2 hours", "2 days". In
 * seconds; null where the text is none, or no unit is said, or the parts do not fall from the larger to the smaller.
 */
export function typedDurationSeconds(text: string): number | null {
  let rest = text.trim()
  let seconds = 0
  let last: TimeUnit | null = null
  while (rest !== '') {
    const bare = minutesBehind.exec(rest)
    if (bare && last === 'h' && Number(bare[1]) < 60) return seconds + Number(bare[1]) * 60
    const found = part.exec(rest)
    const unit = timeSpellings[(found?.[2] ?? '').toLowerCase()]
    if (!found || !unit || (last !== null && smaller[unit] >= smaller[last])) return null
    const number = (found[1] ?? '').trim()
    seconds += secondsFrom(fractionValue(number) ?? Number(number.replace(',', '.')), unit)
    last = unit
    rest = rest.slice(found[0].length)
  }
  return last === null ? null : seconds
}
