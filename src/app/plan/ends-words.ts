import { type TemperatureUnit, temperatureText } from '@/app/kit/temperature-words.ts'
import type { EndsBy } from '@/core/trial/step.ts'
import { plainNumber } from '@/core/wording/number-text.ts'

const places = { dough: 'dough', 'oven-floor': 'oven floor', core: 'core' } as const

/** What ends a step, in a few words; nothing for the clock, which is what a wait says already. */
export function endsWords(endsBy: EndsBy, unit: TemperatureUnit): string {
  if (endsBy.by === 'clock') return ''
  if (endsBy.by === 'reading')
    return `until ${places[endsBy.of]} ${temperatureText(endsBy.celsius, unit)}`
  if (endsBy.mark === 'rise')
    return endsBy.risePercent === undefined
      ? 'until risen'
      : `until risen by ${plainNumber(endsBy.risePercent)} %`
  if (endsBy.mark === 'own') return endsBy.text ? `until ${endsBy.text}` : 'until a mark'
  return endsBy.mark === 'poke' ? 'until the poke test' : 'until the windowpane'
}
