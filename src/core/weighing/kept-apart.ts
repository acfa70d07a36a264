import type { Achieved } from './achieved-level.ts'

export type Apart = 'kept-apart' | 'barely' | 'not'

export interface KeptApart {
  apart: Apart
  gap: number
  /** 2 √(u_a² + u_b²), errors that both batches share left out. */
  blur: number
}

/**
 * Whether the scales keep two levels apart: the blur of their difference is at most a quarter of the gap (kept apart), at
 * most half (barely), or more (not). The quarter and the half are conventions of this notebook.
 */
export function keptApart(one: Achieved, other: Achieved): KeptApart {
  const gap = Math.abs(one.value - other.value)
  const blur = 2 * Math.hypot(one.ownUncertainty, other.ownUncertainty)
  if (gap === 0) return { apart: 'not', gap, blur }
  return { apart: blur <= gap / 4 ? 'kept-apart' : blur <= gap / 2 ? 'barely' : 'not', gap, blur }
}
