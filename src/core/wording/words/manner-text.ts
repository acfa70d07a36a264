import { manner, plainManner } from '@/core/units/manner.ts'
import { weightText } from '@/core/units/mass-text.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import { clockTime } from './civil-time.ts'
import { listText } from './list-text.ts'

/** What the chosen manner makes of a weight, a temperature and a time of day. */
export function figuresExample(): string {
  const afternoon = Date.UTC(2026, 0, 1, 14, 5)
  return `So written: ${weightText(12.5, 0.5)} of salt, dough of ${plainDegrees(24.5)}, at ${clockTime(afternoon, 'UTC')}.`
}

/** In which units a report is written, for whoever gets it: what another kitchen may have to convert is said with its factor. */
export function writtenInText(): string {
  const { mass, temperature, hours, decimal } = manner()
  const parts = [
    mass === 'gram' ? 'weights in grams' : 'weights in ounces (avoirdupois, 1 oz = 28.35 g)',
    temperature === 'celsius' ? 'temperatures in °C' : 'temperatures in °F (°C = (°F − 32) × 5/9)',
    hours === '24' ? 'times by 24 hours' : 'times by 12 hours',
    decimal === 'point' ? 'decimals after a point' : 'decimals after a comma',
  ]
  const levels =
    mass === plainManner.mass && temperature === plainManner.temperature
      ? ''
      : ' Levels and measurements stand in the unit their factor or response was given.'
  return `Written with ${listText(parts)}.${levels}`
}
