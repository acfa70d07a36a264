import { type ComponentType, type LazyExoticComponent, lazy } from 'react'
import { startAhead } from '@/app/worker/open-worker.ts'

/** What stands at each of the five places of a trial and at its lesson, by its name in the address; each is loaded when first opened. */
export const placeViews: Readonly<Record<string, LazyExoticComponent<ComponentType>>> = {
  plan: lazy(async () => {
    startAhead('plan')
    return { default: (await import('@/app/plan/plan-place.tsx')).PlanPlace }
  }),
  bench: lazy(async () => ({ default: (await import('@/app/bench/bench-place.tsx')).BenchPlace })),
  tasting: lazy(async () => ({
    default: (await import('@/app/tasting/tasting-place.tsx')).TastingPlace,
  })),
  findings: lazy(async () => {
    startAhead('findings')
    return { default: (await import('@/app/findings/findings-place.tsx')).FindingsPlace }
  }),
  lesson: lazy(async () => ({
    default: (await import('@/app/findings/lesson/lesson-place.tsx')).LessonPlace,
  })),
  report: lazy(async () => {
    startAhead('report')
    return { default: (await import('@/app/report/report-place.tsx')).ReportPlace }
  }),
}
