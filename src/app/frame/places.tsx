import { type LatePart, latePart } from '@/app/kit/page/late-view.tsx'
import { startAhead } from '@/app/worker/open-worker.ts'

/** What stands at each of the five places of a trial and at its lesson, by its name in the address; each is loaded when first opened. */
const places: Readonly<Record<string, LatePart<object>>> = {
  plan: latePart(async () => {
    startAhead('plan')
    return (await import('@/app/plan/plan-place.tsx')).PlanPlace
  }),
  bench: latePart(async () => (await import('@/app/bench/bench-place.tsx')).BenchPlace),
  tasting: latePart(async () => (await import('@/app/tasting/tasting-place.tsx')).TastingPlace),
  findings: latePart(async () => (await import('@/app/findings/findings-place.tsx')).FindingsPlace),
  lesson: latePart(
    async () => (await import('@/app/findings/lesson/lesson-place.tsx')).LessonPlace,
  ),
  report: latePart(async () => {
    startAhead('report')
    return (await import('@/app/report/report-place.tsx')).ReportPlace
  }),
}

/** The place of this name; throws where there is none: a programmer's mistake. */
export function placeNamed(name: string): LatePart<object> {
  const place = places[name]
  if (!place) throw new Error(`no page for the place ${name}`)
  return place
}
