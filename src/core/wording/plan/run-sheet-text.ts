import type { RunRow } from '@/core/clock-plan/run-sheet.ts'
import type { Hands } from '@/core/clock-plan/whose-hands.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

/** What to do, as a cook calls it out: "Fold 2 of 3, dough 1", "Into the oven, dough 2". */
export function runRowText(row: RunRow): string {
  const pieces = row.pieces === null || row.pieces === 1 ? '' : `, ${row.pieces} pieces`
  const turn = row.repeats > 1 ? ` ${row.repeat} of ${row.repeats}` : ''
  const whose = row.dough === 0 ? 'all doughs' : `dough ${row.dough}`
  return `${doText(row.do, `${row.name}${turn}`)}, ${whose}${pieces}`
}

/** What follows: "then 1 h 20 min", "then about 40 min, until the mark", nothing after the last. */
export function runWaitText({ waitSeconds, waitsForMark }: RunRow): string {
  if (waitSeconds === null || waitSeconds === 0) return ''
  const wait = durationText(waitSeconds)
  return waitsForMark ? `about ${wait}, until the mark` : wait
}

function doText(what: RunRow['do'], name: string): string {
  if (what === 'pull') return 'Out of the oven'
  return what === 'over' ? `${name} is over` : name
}

/** What a helper does next at the bench: "Helper 1 does this: Fold 2 of 3."; nothing of the baker's own work. */
export const helperDoesText = (hands: Hands | undefined, step: string): string =>
  hands?.whose === 'helper' ? `Helper ${hands.number} does this: ${step}.` : ''

/** Of a helper's work, whose it is: "helper 1"; of the baker's nothing. */
export const byHelperText = (hands: Hands | undefined): string =>
  hands?.whose === 'helper' ? `helper ${hands.number}` : ''
