import { type ComponentType, type LazyExoticComponent, lazy } from 'react'

export interface TrialPlace {
  name: string
  title: string
  View: LazyExoticComponent<ComponentType>
}

/** The five places of a trial in the order of the work; each is loaded when first opened. */
export const trialPlaces: readonly TrialPlace[] = [
  {
    name: 'plan',
    title: 'Plan',
    View: lazy(async () => ({
      default: (await import('@/app/plan/plan-place.tsx')).PlanPlace,
    })),
  },
  {
    name: 'bench',
    title: 'Bench',
    View: lazy(async () => ({
      default: (await import('@/app/bench/bench-place.tsx')).BenchPlace,
    })),
  },
  {
    name: 'tasting',
    title: 'Tasting',
    View: lazy(async () => ({
      default: (await import('@/app/tasting/tasting-place.tsx')).TastingPlace,
    })),
  },
  {
    name: 'findings',
    title: 'Findings',
    View: lazy(async () => ({
      default: (await import('@/app/findings/findings-place.tsx')).FindingsPlace,
    })),
  },
  {
    name: 'report',
    title: 'Report',
    View: lazy(async () => ({
      default: (await import('@/app/report/report-place.tsx')).ReportPlace,
    })),
  },
]
