import { Button } from '@/app/kit/button.tsx'
import type { SharedDoseAnswer, SharedDoseRecipe } from '@/core/weighing/shared-dose.ts'
import type { WeighSheet } from '@/core/weighing/weigh-sheet.ts'
import { decimalText } from '@/core/wording/number-text.ts'
import { readingText } from '@/core/wording/weighing-text.ts'
import styles from './panel.module.css'
import { usePlanPage, usePlanStore } from './plan-page-context.ts'

/** Amounts the scales weigh too coarsely, each with one mix or stock for all batches by one press; and those in use. */
export function DoseAdviceList({ sheet }: { sheet: WeighSheet }) {
  const ingredients = usePlanPage((page) => page.plan.formula.ingredients)
  const store = usePlanStore()
  const nameOf = (id: string) => ingredients.find((each) => each.id === id)?.name ?? ''
  const share = (ingredientId: string, by: 'dry-mix' | 'stock') =>
    store
      .getState()
      .changeSaid(`${by === 'stock' ? 'One stock' : 'One dry mix'} for all`, (plan) => ({
        ...plan,
        sharedDoses: [...plan.sharedDoses, { ingredientId, by }],
      }))
  const single = (ingredientId: string) =>
    store.getState().changeSaid(`${nameOf(ingredientId)} weighed singly`, (plan) => ({
      ...plan,
      sharedDoses: plan.sharedDoses.filter((dose) => dose.ingredientId !== ingredientId),
    }))
  if (sheet.advice.length === 0 && sheet.doses.length === 0) return null
  return (
    <ul className={styles.list} aria-label="Small amounts">
      {sheet.advice.map(
        ({ ingredientId, name, relativeUncertainty, smallestGrams, better, ...by }) => {
          const recipe = better === 'dry-mix' ? by.dryMix : by.stock
          return (
            <li key={ingredientId} className={styles.advice}>
              <p>
                {decimalText(smallestGrams, 2)} g of {name} is only good to{' '}
                {decimalText(relativeUncertainty * 100, 0)} % on these scales.{' '}
                {recipe.ok ? `Better: ${recipeWords(recipe, nameOf)}` : ''}
              </p>
              {recipe.ok ? (
                <Button size="small" onPress={() => share(ingredientId, better)}>
                  {better === 'dry-mix' ? 'One dry mix' : 'One stock'} for all
                </Button>
              ) : null}
            </li>
          )
        },
      )}
      {sheet.doses.map((dose) => (
        <li key={dose.ingredientId} className={styles.advice}>
          <p>{doseWords(dose, nameOf)}</p>
          <Button size="small" kind="quiet" onPress={() => single(dose.ingredientId)}>
            Weigh it singly
          </Button>
        </li>
      ))}
    </ul>
  )
}

function recipeWords(recipe: SharedDoseRecipe, nameOf: (id: string) => string): string {
  const mix = recipe.by === 'dry-mix' ? 'one dry mix' : 'one stock'
  const same = new Set(recipe.doses.map(readingText))
  const [dose] = same
  const each = same.size === 1 ? `${dose} of it to every batch` : 'its share to every batch'
  return `${mix} of ${readingText(recipe.ingredient)} ${nameOf(recipe.ingredientId)} in ${readingText(recipe.carrier)} ${nameOf(recipe.carrierId)}, ${each}, good to ${decimalText(recipe.relativeUncertainty * 100, 1)} %.`
}

function doseWords(dose: SharedDoseAnswer, nameOf: (id: string) => string): string {
  const name = nameOf(dose.ingredientId)
  if (dose.ok) return `${name}: ${recipeWords(dose, nameOf)}`
  if (dose.reason === 'no-scale') return `${name} is shared, but no scale is chosen to weigh it on.`
  return dose.reason === 'no-carrier'
    ? `${name} is shared, but there is no ${dose.by === 'stock' ? 'water' : 'flour'} to carry it.`
    : `${name} is shared, but no batch takes any.`
}
