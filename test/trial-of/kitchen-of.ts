import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'

/** One kitchen thing of every kind, two tasters; rising by id. */
export const kitchenOf = (): KitchenThing[] => [
  {
    id: 'flour-1',
    kind: 'flour',
    name: 'Bread flour',
    lot: 'bag 7',
    moisturePercent: 13.5,
    proteinPercent: 12,
  },
  { id: 'fridge-1', kind: 'fridge', name: 'Fridge', celsius: 4, places: 8, freezerCelsius: -18 },
  {
    id: 'mixer-1',
    kind: 'mixer',
    name: 'Hands',
    leastDoughGrams: 100,
    mostDoughGrams: 4000,
    bowlGrams: 900,
    bowlHeat: 0.5,
  },
  { id: 'oven-1', kind: 'oven', name: 'Deck', places: 2, maxCelsius: 300, note: 'hot at the back' },
  { id: 'scale-1', kind: 'scale', name: 'Bench scale', resolutionGrams: 1, capacityGrams: 5000 },
  { id: 'tap-1', kind: 'tap', name: 'Tap', coldestCelsius: 11, warmestCelsius: 48 },
  { id: 'taster-1', kind: 'taster', initials: 'RV' },
  { id: 'taster-2', kind: 'taster', initials: 'OK' },
  { id: 'thermometer-1', kind: 'thermometer', name: 'Probe', spreadCelsius: 0.5 },
]
