import { useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import { RoomFor } from '@/app/plan/field/room-for.tsx'
import { usePlanActions, usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { EarlierTrial } from '@/app/plan/start/earlier-trial.tsx'
import { useServices } from '@/app/services/services.ts'
import type { IngredientKind } from '@/core/formula/formula-record.ts'
import { addedForFactor } from '@/core/plan-edits/formula/added-for-factor.ts'
import { withFormula } from '@/core/plan-edits/formula/replace-formula.ts'
import { usualIngredient, usualPreferment } from '@/core/plan-edits/formula/usual-ingredient.ts'
import { inFormula } from '@/core/plan-edits/parts/in-part.ts'
import { formulaReplacedText } from '@/core/wording/plan/formula-lacks-text.ts'
import { ingredientKindNames } from '@/core/wording/words/ingredient-kind-names.ts'
import { BatchSizeFields } from './batch-size.tsx'
import { FlourSum } from './flour-sum.tsx'
import styles from './formula-section.module.css'
import { FormulaViewsTables } from './formula-views-tables.tsx'
import { IngredientRow } from './ingredient-row.tsx'
import { PasteInPlan } from './paste-in-plan.tsx'
import { PrefermentRow } from './preferment-row.tsx'

/** The dough itself: ingredients in percent of flour, what ferments ahead, how much is made, and the three views of it. */
export function FormulaSection() {
  const ingredients = usePlanPage((page) => page.plan.formula.ingredients)
  const preferments = usePlanPage((page) => page.plan.formula.preferments)
  const { change, changeSaid } = usePlanActions()
  const [start, setStart] = useState<'paste' | 'earlier' | null>(null)
  const { newId } = useServices()
  const store = usePlanStore()
  const add = (kind: IngredientKind) =>
    change((plan) =>
      inFormula(plan, (formula) => ({
        ...formula,
        ingredients: [...formula.ingredients, usualIngredient(kind, newId())],
      })),
    )
  const addPreferment = () =>
    change((plan) =>
      inFormula(plan, (formula) => ({
        ...formula,
        preferments: [...formula.preferments, usualPreferment(formula.ingredients, newId())],
      })),
    )
  return (
    <PlanSection id="plan-formula" aside="percent of all flour, preferments counted in">
      <div className={styles.presses}>
        <Button size="small" onPress={() => setStart('paste')}>
          Paste a formula
        </Button>
        <Button size="small" onPress={() => setStart('earlier')}>
          Take one from an earlier trial
        </Button>
      </div>
      {start === 'paste' ? <PasteInPlan onClose={() => setStart(null)} /> : null}
      {start === 'earlier' ? (
        <EarlierTrial
          title="The formula of an earlier trial"
          takes="its formula"
          onPick={({ formula }) =>
            changeSaid(
              formulaReplacedText(addedForFactor(store.getState().plan, formula)?.names ?? []),
              (plan) => withFormula(plan, formula, newId),
              'ingredient/',
            )
          }
          onClose={() => setStart(null)}
        />
      ) : null}
      <ol className={styles.rows} data-path="/formula/ingredients">
        {ingredients.map((ingredient, index) => (
          <IngredientRow key={ingredient.id} ingredient={ingredient} index={index} />
        ))}
      </ol>
      <TroubleHere at="/formula/ingredients" />
      <TroubleHere at="/formula" />
      <FlourSum />
      <fieldset className={styles.presses}>
        <legend className={styles.legend}>Add</legend>
        <RoomFor part="ingredients" count={ingredients.length}>
          {(Object.keys(ingredientKindNames) as IngredientKind[]).map((kind) => (
            <Button key={kind} size="small" onPress={() => add(kind)}>
              {ingredientKindNames[kind]}
            </Button>
          ))}
        </RoomFor>
        <RoomFor part="preferments" count={preferments.length}>
          <Button size="small" onPress={addPreferment}>
            preferment
          </Button>
        </RoomFor>
      </fieldset>
      {preferments.map((preferment, index) => (
        <PrefermentRow key={preferment.id} preferment={preferment} index={index} />
      ))}
      <BatchSizeFields />
      <FormulaViewsTables />
    </PlanSection>
  )
}
