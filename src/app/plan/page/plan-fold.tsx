import type { ReactNode } from 'react'
import { Fold } from '@/app/kit/page/fold.tsx'
import { type PlanPartId, partTitle } from './part-names.ts'
import { usePlanActions, usePlanPage } from './plan-page-context.ts'
import { PlanPart } from './plan-part.tsx'

interface PlanFoldProps {
  part: PlanPartId
  /** What stands in it, in one line. */
  result: ReactNode
  children: ReactNode
}

/** A part of the plan as one row that states its result; it opens by a press, by a way that leads into it, and where text in it is unfinished. */
export function PlanFold({ part, result, children }: PlanFoldProps) {
  const open = usePlanPage((page) => page.opened.includes(part))
  const { turn } = usePlanActions()
  return (
    <div data-plan-part={part}>
      <Fold
        name={partTitle(part)}
        result={result}
        open={open}
        onToggle={(next) => turn(part, next)}
      >
        <PlanPart what={`the part “${partTitle(part)}”`}>{children}</PlanPart>
      </Fold>
    </div>
  )
}
