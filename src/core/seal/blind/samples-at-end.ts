import type { BlindServing } from './blind-view.ts'

/**
 * What the questions at the end are about: all codes, rising, which tells nothing of the order of tasting; of plates those of the
 * last round, which still stand before their taster.
 */
export function samplesAtEnd<Sample extends Pick<BlindServing, 'code' | 'plate'>>(
  servings: readonly Sample[],
): Sample[] {
  const begins = servings.findLastIndex(({ plate }) => plate === 1)
  return begins >= 0
    ? servings.slice(begins)
    : servings.toSorted((one, other) => one.code.localeCompare(other.code))
}
