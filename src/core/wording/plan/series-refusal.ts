import { type LevelsBetween, mostLevels } from '@/core/trial/levels-between.ts'

/** Why a series of levels cannot be made, with the mend. */
export function seriesRefusal({ reason }: Extract<LevelsBetween, { ok: false }>): string {
  return reason === 'same-ends'
    ? 'First and last are the same. Write two different numbers.'
    : `Write two different numbers and a count from 2 to ${mostLevels}.`
}
