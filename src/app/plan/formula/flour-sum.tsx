import { Button } from '@/app/kit/press/button.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { flourPercent } from '@/core/formula/totals.ts'
import { flourScaled } from '@/core/plan-edits/formula/flour-scaled.ts'
import { inFormula } from '@/core/plan-edits/parts/in-part.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import styles from './formula-section.module.css'

/** When the flours do not make 100 %: how far off, and the mend by one press. Nothing otherwise. */
export function FlourSum() {
  const formula = usePlanPage((page) => page.plan.formula)
  const { change } = usePlanActions()
  const sum = flourPercent(formula)
  const flours = formula.ingredients.filter((each) => each.kind === 'flour')
  if (flours.length === 0 || Math.abs(sum - 100) < 1e-6) return null
  return (
    <div className={styles.sum}>
      <span>Flours add up to {plainNumber(Math.round(sum * 100) / 100)} %, not 100.</span>
      {sum > 0 ? (
        <Button size="small" onPress={() => change((plan) => inFormula(plan, flourScaled))}>
          Scale them to 100 %
        </Button>
      ) : null}
    </div>
  )
}
