import { type ComponentType, type LazyExoticComponent, lazy } from 'react'

export interface TrialPlace {
  name: string
  title: string
  View: LazyExoticComponent<ComponentType<{ trialId: string }>>
}

/** The five places of a trial in the order of the work; each is loaded when first opened. */
export const trialPlaces: readonly TrialPlace[] = [
  {
    name: 'bench',
    title: 'Bench',
    View: lazy(async () => ({
      default: (await import('@/app/bench/bench-place.tsx')).BenchPlace,
    })),
  },
]
