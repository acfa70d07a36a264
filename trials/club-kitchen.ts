import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'

/**
 * The kitchen of the bake club on Tannery Lane, which exists in these samples alone. Its things have the same ids in every
 * sample, so that opening two samples does not double the kitchen.
 */
export function clubKitchen(initials: readonly string[]): KitchenThing[] {
  return [
    {
      id: 'club-bench-scale',
      kind: 'scale',
      name: 'Bench scale',
      resolutionGrams: 1,
      capacityGrams: 5000,
    },
    {
      id: 'club-small-scale',
      kind: 'scale',
      name: 'Small scale',
      resolutionGrams: 0.01,
      capacityGrams: 200,
    },
    { id: 'club-probe', kind: 'thermometer', name: 'Probe', spreadCelsius: 0.5 },
    { id: 'club-oven', kind: 'oven', name: 'Deck oven of the club', places: 4, maxCelsius: 320 },
    {
      id: 'club-bowl',
      kind: 'mixer',
      name: 'By hand, in a bowl',
      leastDoughGrams: 200,
      mostDoughGrams: 2500,
      way: 'hand',
    },
    {
      id: 'club-tap',
      kind: 'tap',
      name: 'Kitchen tap',
      coldestCelsius: 12,
      warmestCelsius: 48,
    },
    ...initials.map(
      (each): KitchenThing => ({
        id: `club-taster-${each.toLowerCase()}`,
        kind: 'taster',
        initials: each,
      }),
    ),
  ]
}

/** Ids of the things a plan names: all but the tasters, who stand in the plan's own list. */
export function thingsOf(kitchen: readonly KitchenThing[]): string[] {
  return kitchen.filter((thing) => thing.kind !== 'taster').map((thing) => thing.id)
}

/** The kitchen's tasters as a plan lists them; none of them knows which is which. */
export function tastersOf(kitchen: readonly KitchenThing[]) {
  return kitchen
    .filter((thing) => thing.kind === 'taster')
    .map((thing) => ({ tasterId: thing.id, knows: false }))
}
