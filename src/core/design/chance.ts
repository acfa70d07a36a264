import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'

/** A stream of draws; drawing from it moves it on. */
export type Chance = RandomGenerator

const settle = (seed: number): Chance => {
  const chance = xoroshiro128plus(seed | 0)
  for (let skipped = 0; skipped < 8; skipped += 1) chance.next()
  return chance
}

/**
 * The stream of draws for one purpose of a trial. `path` names the purpose (which session, which draw), so that one draw more
 * in one place leaves every other place as it was. Xoroshiro128+; the same seed and path always give the same draws.
 */
export function chanceFrom(seed: number, ...path: number[]): Chance {
  let mixed = seed
  for (const part of path) mixed = settle(mixed ^ Math.imul(part + 1, 0x9e3779b9)).next()
  return settle(mixed)
}

/** A whole number from `least` to `most`, both ends included, each as likely as any other. */
export function wholeBetween(chance: Chance, least: number, most: number): number {
  return uniformInt(chance, least, most)
}

/** The items in a random order, every order equally likely (Fisher and Yates); the list itself stays as it is. */
export function shuffled<Item>(chance: Chance, items: readonly Item[]): Item[] {
  const pool = [...items]
  const out: Item[] = []
  while (pool.length > 0) out.push(...pool.splice(uniformInt(chance, 0, pool.length - 1), 1))
  return out
}
