import type { OddReadingWords } from '@/app/bench/entries/odd-reading.tsx'
import { useOddWeight } from '@/app/bench/entries/use-odd-weight.ts'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import type { Event } from '@/core/session/event-record.ts'
import { oddCelsiusText } from '@/core/wording/bench/odd-celsius-text.ts'

/** What is said of a corrected number that would hardly be right, as of one that is logged for the first time. */
export function useOddCorrection(event: Event): (value: number) => OddReadingWords | null {
  const degrees = useTemperatureText()
  const { lines, oddIn } = useOddWeight(event.about.id)
  if (event.kind === 'temperature') return (celsius) => oddCelsiusText(event.of, celsius, degrees)
  if (event.kind !== 'weighed') return () => null
  const line = lines.find(
    ({ loggedAs }) =>
      loggedAs?.ingredientId === event.ingredientId &&
      loggedAs.prefermentId === (event.prefermentId ?? null),
  )
  if (!line) return () => null
  // An ingredient may have been added in several goes: what the others weighed stays.
  const others = (line.logged?.grams ?? event.grams) - event.grams
  return (grams) => oddIn(line, others + grams)
}
