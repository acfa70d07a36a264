import { viewMillimetres } from '@/core/session/press/usual-readings.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import { amountCheck } from './amount-checks.ts'

/**
 * The part of a photo's entry that a typed width of its view gives, read as centimetres where no unit is typed; nothing of an empty
 * field, null of one that cannot be read or cannot be.
 */
export function widthOfView(text: string): { widthMillimetres?: number } | null {
  const read = typedNumber(text, 'cm')
  if (!read.ok || (read.value !== null && amountCheck.view(read.value) !== undefined)) return null
  return read.value === null ? {} : { widthMillimetres: viewMillimetres(read.value) }
}
