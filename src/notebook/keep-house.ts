import { type House, houseShape } from '@/core/house/house-record.ts'
import { checked } from './checked.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'

/** All house formulas that are not in the bin, the one changed last first. A damaged one is told, never handed out. */
export function housesOf(kept: readonly House[]): House[] {
  const houses = kept.map((each) => checked(houseShape, each, 'damaged'))
  const lastAt = (house: House) => house.revisions.at(-1)?.at ?? house.createdAt
  return houses
    .filter((house) => house.binnedAt === undefined)
    .sort((one, other) => lastAt(other) - lastAt(one) || (one.id < other.id ? -1 : 1))
}

/** One house formula, in the bin or not. */
export function houseOf(kept: House | undefined): House | undefined {
  return kept === undefined ? undefined : checked(houseShape, kept, 'damaged')
}

/**
 * Keeps a house formula, new or with revisions more. A revision that was kept is never changed or left out: another window
 * that added one meanwhile is told, and nothing is kept.
 */
export async function keepHouse(store: Store, house: House): Promise<void> {
  const given = checked(houseShape, house)
  await store.transaction('rw', store.houses, async () => {
    const before = houseOf(await store.houses.get(given.id))
    const changed = before?.revisions.some(
      (revision, at) => JSON.stringify(revision) !== JSON.stringify(given.revisions[at]),
    )
    if (changed) throw new NotebookFailure('house-moved-on', given.id)
    await store.houses.put(given)
  })
}

/** Into the bin, at a moment, and out of it. */
export async function binHouse(store: Store, id: string, at: number | undefined): Promise<void> {
  await store.transaction('rw', store.houses, async () => {
    const before = houseOf(await store.houses.get(id))
    if (!before) throw new NotebookFailure('refused-record', `there is no house formula ${id}`)
    const { binnedAt: _, ...kept } = before
    await store.houses.put(at === undefined ? kept : { ...kept, binnedAt: at })
  })
}
