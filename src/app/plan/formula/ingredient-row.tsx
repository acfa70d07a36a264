import { memo } from 'react'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { percentCheck, visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useTakeOut } from '@/app/plan/page/use-take-out.ts'
import type { Ingredient, IngredientKind } from '@/core/formula/formula-record.ts'
import { asKind } from '@/core/plan-edits/formula/one-ingredient.ts'
import { inIngredient } from '@/core/plan-edits/parts/in-part.ts'
import { takeOutIngredient } from '@/core/plan-edits/take-out/take-out.ts'
import { movedBy } from '@/core/wording/plan/moved-by.ts'
import { ingredientKindNames } from '@/core/wording/words/ingredient-kind-names.ts'
import styles from './formula-section.module.css'
import { IngredientMore } from './ingredient-more.tsx'

interface Props {
  ingredient: Ingredient
  index: number
}

const namesIngredient = visibleName("the ingredient's name")
const kindOptions = (Object.keys(ingredientKindNames) as IngredientKind[]).map((kind) => ({
  value: kind,
  label: ingredientKindNames[kind],
}))

/** One ingredient: name, kind, percent of flour, and what only its kind asks for. */
export const IngredientRow = memo(function IngredientRow({ ingredient, index }: Props) {
  const { id, name, kind, percent } = ingredient
  const { change } = usePlanActions()
  const takeOut = useTakeOut()
  const moves = usePlanPage((page) => movedBy(page.plan, id))
  const edit = (to: (one: Ingredient) => Ingredient) => change((plan) => inIngredient(plan, id, to))
  return (
    <li className={styles.row}>
      <PlanText
        field={`ingredient/${id}/name`}
        path={`/formula/ingredients/${index}/name`}
        label={`Ingredient ${index + 1}`}
        hideLabel
        value={name}
        check={namesIngredient}
        onValue={(next) => edit((one) => ({ ...one, name: next }))}
      />
      <SelectField
        label={`Kind of ${name}`}
        hideLabel
        value={kind}
        options={kindOptions}
        onValue={(next) => edit((one) => asKind(one, next))}
        disabled={moves !== null}
      />
      {moves === null ? (
        <PlanNumber
          field={`ingredient/${id}/percent`}
          path={`/formula/ingredients/${index}/percent`}
          label={`${name}, percent of flour`}
          hideLabel
          unit="%"
          value={percent}
          digits={4}
          check={percentCheck}
          onValue={(next) => edit((one) => ({ ...one, percent: next }))}
        />
      ) : (
        <span className={styles.moves} data-path={`/formula/ingredients/${index}/percent`}>
          {moves}
        </span>
      )}
      <Button
        kind="quiet"
        label={`Remove ${name}`}
        disabled={moves !== null}
        onPress={() => takeOut((plan) => takeOutIngredient(plan, id))}
      >
        Remove
      </Button>
      <IngredientMore ingredient={ingredient} index={index} edit={edit} />
    </li>
  )
})
