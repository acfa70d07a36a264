import { Fold } from '@/app/kit/page/fold.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { MethodLine } from '@/app/plan/method/method-line.tsx'
import { PlanFold } from '@/app/plan/page/plan-fold.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanPart } from '@/app/plan/page/plan-part.tsx'
import { WeighSheetPanel } from '@/app/plan/panels/weigh-sheet-panel.tsx'
import { massName } from '@/core/units/mass-text.ts'
import { methodSumText } from '@/core/wording/plan/method-line.ts'
import { countText } from '@/core/wording/words/list-text.ts'

interface WorkedPartProps {
  /** One column: the part is folded with its result. */
  narrow: boolean
}

/** Formula and weigh sheet as one ledger. */
export function SheetPart({ narrow }: WorkedPartProps) {
  const doughs = usePlanPage(({ plan }) => (plan.doughs === 'one' ? 1 : plan.levels.length))
  if (narrow)
    return (
      <PlanFold part="plan-sheet" result={`${massName()} of ${countText(doughs, 'dough')}`}>
        <WeighSheetPanel />
      </PlanFold>
    )
  return (
    <PlanPart what="the weigh sheet">
      <WeighSheetPanel />
    </PlanPart>
  )
}

/** The method as a line of time. */
export function MethodPart({ narrow }: WorkedPartProps) {
  const sum = usePlanPage(({ plan }) => methodSumText(plan.steps))
  const line = (
    <PlanPart what="the line of the method">
      <MethodLine />
    </PlanPart>
  )
  return narrow ? (
    <Fold name="The day of one dough" result={sum}>
      {line}
    </Fold>
  ) : (
    <Section title="Method" aside={sum}>
      {line}
    </Section>
  )
}
