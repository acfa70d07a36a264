import { type Chance, chanceFrom } from '@/core/design/chance.ts'

/** A stream of normal draws (Box and Muller) from a seeded stream of uniform ones. */
export function normalsFrom(seed: number, ...path: number[]): (sd: number) => number {
  const chance = chanceFrom(seed, ...path)
  return (sd) =>
    sd * Math.sqrt(-2 * Math.log(uniform(chance))) * Math.cos(2 * Math.PI * uniform(chance))
}

/** A number strictly between 0 and 1. */
function uniform(chance: Chance): number {
  return ((chance.next() >>> 0) + 0.5) / 4_294_967_296
}
