import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'

/** The kitchen of the bake club on Tannery Lane, which exists in these samples alone. */
export function clubKitchen(newId: () => string, initials: readonly string[]): KitchenThing[] {
  return [
    {
      id: newId(),
      kind: 'scale',
      name: 'Bench scale',
      resolutionGrams: 1,
      capacityGrams: 5000,
    },
    {
      id: newId(),
      kind: 'scale',
      name: 'Small scale',
      resolutionGrams: 0.01,
      capacityGrams: 200,
    },
    { id: newId(), kind: 'thermometer', name: 'Probe', spreadCelsius: 0.5 },
    { id: newId(), kind: 'oven', name: 'Deck oven of the club', places: 2, maxCelsius: 320 },
    {
      id: newId(),
      kind: 'mixer',
      name: 'By hand, in a bowl',
      leastDoughGrams: 200,
      mostDoughGrams: 2500,
      workKilojoulesPerKilogram: 2,
    },
    {
      id: newId(),
      kind: 'tap',
      name: 'Kitchen tap',
      coldestCelsius: 12,
      warmestCelsius: 48,
    },
    ...initials.map((each): KitchenThing => ({ id: newId(), kind: 'taster', initials: each })),
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
