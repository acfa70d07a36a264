import type { FactorKind } from './factor.ts'

export interface LevelBounds {
  least: number
  most: number
  /** Levels are counts: whole numbers only. */
  whole: boolean
}

const percent = { least: 0, most: 1000, whole: false }
const share = { least: 0, most: 100, whole: false }
const time = { least: 0, most: 100_000, whole: false }

const bounds: Readonly<Record<FactorKind, LevelBounds>> = {
  hydration: percent,
  salt: share,
  yeast: share,
  ingredient: percent,
  'preferment-share': share,
  'flour-share': share,
  'rest-time': time,
  'proof-time': time,
  'cold-hours': { least: 0, most: 1000, whole: false },
  'bake-temperature': { least: -80, most: 1300, whole: false },
  'bake-time': time,
  'fold-count': { least: 0, most: 100, whole: true },
  'piece-mass': { least: 1, most: 1e6, whole: false },
  own: { least: -1e6, most: 1e6, whole: false },
  choice: { least: 0, most: 0, whole: false },
}

/** What a level of a factor can be at all, in the factor's own unit: physical bounds, not the usual ones. */
export function levelBounds(kind: FactorKind): LevelBounds {
  return bounds[kind]
}
