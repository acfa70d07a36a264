import type { KitchenThing } from './kitchen-record.ts'

/** The moisture, in %, at which a flour's water is told by convention. */
export const agreedMoisturePercent = 14

/** Moisture of a flour where the kitchen knows its bag; undefined where it does not. */
export function moistureIn(kitchen: readonly KitchenThing[]) {
  return ({ flourLotId }: { flourLotId?: string }): number | undefined => {
    const bag = kitchen.find(({ id, kind }) => kind === 'flour' && id === flourLotId)
    return bag?.kind === 'flour' ? bag.moisturePercent : undefined
  }
}

/** Grams of flour at 14 % moisture in a gram of flour at another: (100 − M) / 86; the rest of the gram counts as water, less than none where it is drier. */
export function flourAtAgreedMoisture(moisturePercent: number): number {
  return (100 - moisturePercent) / (100 - agreedMoisturePercent)
}
