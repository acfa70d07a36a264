import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'

/** An entry in the list: what it is called, and its figures in one line. */
export function thingWords(thing: KitchenThing): { title: string; facts: string } {
  const facts = (parts: (string | false | undefined)[]) => parts.filter(Boolean).join(', ')
  switch (thing.kind) {
    case 'scale':
      return {
        title: thing.name,
        facts: `steps of ${thing.resolutionGrams} g, up to ${thing.capacityGrams} g`,
      }
    case 'taster':
      return {
        title: thing.initials || 'erased taster',
        facts: thing.erasedAt ? 'scores kept without a name' : '',
      }
    case 'thermometer':
      return { title: thing.name, facts: `good to ±${thing.spreadCelsius} °C` }
    case 'oven':
      return {
        title: thing.name,
        facts: facts([
          thing.places === 1 ? 'one piece at once' : `${thing.places} pieces at once`,
          thing.maxCelsius !== undefined && `up to ${thing.maxCelsius} °C`,
        ]),
      }
    case 'mixer':
      return {
        title: thing.name,
        facts: facts([
          `${thing.leastDoughGrams} to ${thing.mostDoughGrams} g of dough`,
          thing.workKilojoulesPerKilogram !== undefined &&
            `work ${thing.workKilojoulesPerKilogram} kJ per kg`,
          thing.bowlGrams !== undefined && `bowl ${thing.bowlGrams} g`,
        ]),
      }
    case 'fridge':
      return {
        title: thing.name,
        facts: facts([
          `${thing.celsius} °C`,
          thing.places !== undefined && `${thing.places} tubs`,
          thing.freezerCelsius !== undefined && `freezer ${thing.freezerCelsius} °C`,
        ]),
      }
    case 'tap':
      return {
        title: thing.name,
        facts: `${thing.coldestCelsius} to ${thing.warmestCelsius} °C`,
      }
    case 'flour':
      return {
        title: thing.name,
        facts: facts([
          thing.lot,
          thing.moisturePercent !== undefined && `moisture ${thing.moisturePercent} %`,
          thing.proteinPercent !== undefined && `protein ${thing.proteinPercent} %`,
        ]),
      }
  }
}
