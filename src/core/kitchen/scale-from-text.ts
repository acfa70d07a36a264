import { type NumberTrouble, readNumber } from '@/core/units/read-number.ts'
import type { Scale } from './kitchen-record.ts'

/**
 * A scale written as RESOLUTION:CAPACITY in grams, such as "0.1:2000". Refuses a missing half ("not-two-numbers"), halves
 * that are no numbers above zero, and a resolution that is not below the capacity.
 */
export function scaleFromText(
  text: string,
  id: string,
):
  | { ok: true; scale: Scale }
  | { ok: false; reason: 'not-two-numbers' | 'coarser-than-capacity' }
  | NumberTrouble {
  const halves = text.split(':')
  if (halves.length !== 2) return { ok: false, reason: 'not-two-numbers' }
  const resolution = readNumber(halves[0] ?? '', { least: 1e-6, most: 1000, units: ['g'] })
  if (!resolution.ok) return resolution
  const capacity = readNumber(halves[1] ?? '', { least: 1e-6, most: 1e6, units: ['g'] })
  if (!capacity.ok) return capacity
  if (resolution.value >= capacity.value) return { ok: false, reason: 'coarser-than-capacity' }
  const grams = { resolutionGrams: resolution.value, capacityGrams: capacity.value }
  return { ok: true, scale: { id, kind: 'scale', name: text.trim(), ...grams } }
}
