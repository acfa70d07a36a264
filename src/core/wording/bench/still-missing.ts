import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { TastingState } from '@/core/tasting/tasting-state.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { tasterName } from '@/core/wording/words/taster-name.ts'

/** What a sealed tasting waits for, by taster: "Still missing: 3 ballots of BM and 12 of DR." Names no code and no level. */
export function stillMissing(
  state: Pick<TastingState, 'tasters' | 'seal' | 'closedBecause'>,
  kitchen: readonly KitchenThing[],
): string {
  if (state.seal === 'closed' && state.closedBecause === null)
    return 'Every ballot is in. What lay under the plates is still to be said.'
  if (state.seal === 'closed')
    return `It was closed before every ballot was in: ${state.closedBecause}. The codes wait to be unsealed.`
  const open = state.tasters.filter(
    ({ presence, missing }) => presence === 'present' && missing.length > 0,
  )
  const awaited = state.tasters.filter(({ presence }) => presence === 'awaited')
  if (open.length === 0 && awaited.length === 0)
    return 'Every ballot is in. The codes wait to be unsealed.'
  const parts = open.map(({ tasterId, missing }, index) => {
    const ballots = index > 0 ? '' : missing.length === 1 ? ' ballot' : ' ballots'
    return `${missing.length}${ballots} of ${tasterName(tasterId, kitchen)}`
  })
  const names = awaited.map(({ tasterId }) => tasterName(tasterId, kitchen))
  return [
    parts.length > 0 ? `Still missing: ${listText(parts)}.` : 'Every ballot begun is in.',
    names.length > 0
      ? `Not yet at the table: ${listText(names)}. Whoever does not come is marked as not tasting.`
      : '',
  ]
    .filter(Boolean)
    .join(' ')
}
