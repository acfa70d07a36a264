import { PasteFormula } from '@/app/kit/taken/paste-formula.tsx'
import { usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import { formulaReplacedText } from '@/core/wording/plan/formula-lacks-text.ts'

/** A pasted formula in place of the plan's own. */
export function PasteInPlan({ onClose }: { onClose: () => void }) {
  const store = usePlanStore()
  const { newId } = useServices()
  const plan = usePlanPage((page) => page.plan)
  return (
    <PasteFormula
      plan={plan}
      newId={newId}
      onTake={(formula, added) =>
        store
          .getState()
          .changeSaid(
            formulaReplacedText(added),
            (before) => withFormula(before, formula, newId),
            'ingredient/',
          )
      }
      onClose={onClose}
    />
  )
}
