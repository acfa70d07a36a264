import type { ReactNode } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { usePlanPage } from './plan-page-context.ts'

interface PlanPartProps {
  /** As a person would call it: "the weigh sheet". */
  what: string
  children: ReactNode
}

/** A part of the page by itself: when it fails the others stay, and with the next change of the plan it is tried again. */
export function PlanPart({ what, children }: PlanPartProps) {
  const plan = usePlanPage((page) => page.plan)
  return (
    <ErrorBoundary what={what} of={plan}>
      {children}
    </ErrorBoundary>
  )
}
