import { SelectField } from '@/app/kit/field/select-field.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { factsOfKind } from '@/core/plan-edits/factor/factor-kinds.ts'
import { inFactor } from '@/core/plan-edits/parts/in-part.ts'
import type { ActsOn } from '@/core/trial/factor.ts'

/** Which ingredient, preferment or step the factor moves; a flour's share also names the flour it is taken from. */
export function FactorTargetFields() {
  const acts = usePlanPage((page) => page.plan.factor.acts)
  if ('fromIngredientId' in acts) return <TwoFlours acts={acts} />
  if ('ingredientId' in acts) return <IngredientTarget acts={acts} />
  if ('prefermentId' in acts) return <PrefermentTarget acts={acts} />
  if ('stepId' in acts) return <StepTarget acts={acts} />
  return null
}

type With<Key extends string> = Extract<ActsOn, Record<Key, string>>

function useActs(): (acts: ActsOn) => void {
  const { change } = usePlanActions()
  return (acts) => change((plan) => inFactor(plan, { acts }))
}

function IngredientTarget({ acts }: { acts: With<'ingredientId'> }) {
  const ingredients = usePlanPage((page) => page.plan.formula.ingredients)
  const set = useActs()
  const { target } = factsOfKind(acts.on)
  const kinds = target.names === 'ingredient' ? target.kinds : []
  return (
    <SelectField
      label="Moves"
      value={acts.ingredientId}
      options={named(ingredients.filter((each) => kinds.includes(each.kind)))}
      onValue={(ingredientId) => set({ ...acts, ingredientId })}
    />
  )
}

function TwoFlours({ acts }: { acts: With<'fromIngredientId'> }) {
  const ingredients = usePlanPage((page) => page.plan.formula.ingredients)
  const set = useActs()
  const flours = ingredients.filter((each) => each.kind === 'flour')
  const without = (id: string) => named(flours.filter((each) => each.id !== id))
  return (
    <>
      <SelectField
        label="The share of"
        value={acts.ingredientId}
        options={without(acts.fromIngredientId)}
        onValue={(ingredientId) => set({ ...acts, ingredientId })}
      />
      <SelectField
        label="Taken from"
        value={acts.fromIngredientId}
        options={without(acts.ingredientId)}
        onValue={(fromIngredientId) => set({ ...acts, fromIngredientId })}
      />
    </>
  )
}

function PrefermentTarget({ acts }: { acts: With<'prefermentId'> }) {
  const preferments = usePlanPage((page) => page.plan.formula.preferments)
  const set = useActs()
  return (
    <SelectField
      label="Moves"
      value={acts.prefermentId}
      options={named(preferments)}
      onValue={(prefermentId) => set({ ...acts, prefermentId })}
    />
  )
}

function StepTarget({ acts }: { acts: With<'stepId'> }) {
  const steps = usePlanPage((page) => page.plan.steps)
  const set = useActs()
  const { target } = factsOfKind(acts.on)
  const kinds = target.names === 'step' ? target.kinds : []
  return (
    <SelectField
      label="Step"
      value={acts.stepId}
      options={named(steps.filter((step) => kinds.includes(step.kind)))}
      onValue={(stepId) => set({ ...acts, stepId })}
    />
  )
}

const named = (things: readonly { id: string; name: string }[]) =>
  things.map(({ id, name }) => ({ value: id, label: name }))
