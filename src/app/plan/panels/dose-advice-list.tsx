import { Button } from '@/app/kit/press/button.tsx'
import { usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { withoutSharedDose, withSharedDose } from '@/core/plan-edits/doses/shared-doses.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { doseAdviceText, sharedDoseText } from '@/core/wording/weighing/weighing-text.ts'
import styles from './panel.module.css'

/** Amounts the scales weigh too coarsely, each with one mix or stock for all batches by one press; and those in use. */
export function DoseAdviceList({ sheet }: { sheet: WeighSheet }) {
  const formula = usePlanPage((page) => page.plan.formula)
  const store = usePlanStore()
  const nameOf = (id: string) => formula.ingredients.find((each) => each.id === id)?.name ?? ''
  const share = (ingredientId: string, by: 'dry-mix' | 'stock') =>
    store
      .getState()
      .changeSaid(`${by === 'stock' ? 'One stock' : 'One dry mix'} for all`, (plan) =>
        withSharedDose(plan, ingredientId, by),
      )
  const single = (ingredientId: string) =>
    store
      .getState()
      .changeSaid(`${nameOf(ingredientId)} weighed singly`, (plan) =>
        withoutSharedDose(plan, ingredientId),
      )
  if (sheet.advice.length === 0 && sheet.doses.length === 0) return null
  return (
    <ul className={styles.list} aria-label="Small amounts">
      {sheet.advice.map((advice) => {
        const { ingredientId, better } = advice
        const recipe = better === 'dry-mix' ? advice.dryMix : advice.stock
        return (
          <li key={ingredientId} className={styles.advice}>
            <p>{doseAdviceText(advice, { formula })}</p>
            {recipe.ok ? (
              <Button size="small" onPress={() => share(ingredientId, better)}>
                {better === 'dry-mix' ? 'One dry mix' : 'One stock'} for all
              </Button>
            ) : null}
          </li>
        )
      })}
      {sheet.doses.map((dose) => (
        <li
          key={`${dose.ingredientId} ${dose.stage?.prefermentId ?? ''}`}
          className={styles.advice}
        >
          <p>{sharedDoseText(dose, { formula })}</p>
          <Button size="small" kind="quiet" onPress={() => single(dose.ingredientId)}>
            Weigh it singly
          </Button>
        </li>
      ))}
    </ul>
  )
}
