import { SelectField } from '@/app/kit/field/select-field.tsx'
import { percentCheck, visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import type { Change } from '@/core/trial/level.ts'

interface Props<C extends Change> {
  field: string
  path: string
  change: C
  onChange: (change: Change) => void
}

type Of<What extends Change['what']> = Extract<Change, { what: What }>

const namesSwap = visibleName('what this option uses instead')
const namesTool = visibleName('the tool')

/** The fields of one difference of an option. */
export function OptionChange({ field, path, change, onChange }: Props<Change>) {
  const place = { field, path, onChange }
  switch (change.what) {
    case 'ingredient':
      return <SwappedIngredient {...place} change={change} />
    case 'hydration':
      return (
        <PlanNumber
          field={`${field}/percent`}
          path={`${path}/percent`}
          label="Its own hydration"
          unit="%"
          value={change.percent}
          check={percentCheck}
          onValue={(percent) => onChange({ ...change, percent })}
        />
      )
    case 'tool':
      return (
        <PlanText
          field={`${field}/name`}
          path={`${path}/name`}
          label="Tool"
          value={change.name}
          check={namesTool}
          onValue={(name) => onChange({ ...change, name })}
        />
      )
    case 'step':
      return <SkippedStep {...place} change={change} />
    case 'note':
      return (
        <PlanText
          field={`${field}/text`}
          path={`${path}/text`}
          label="In words"
          value={change.text}
          maxLength={5000}
          onValue={(text) => onChange({ ...change, text })}
          wide
        />
      )
  }
}

function SwappedIngredient({ field, path, change, onChange }: Props<Of<'ingredient'>>) {
  const ingredients = usePlanPage((page) => page.plan.formula.ingredients)
  return (
    <>
      <SelectField
        label="Instead of"
        value={change.ingredientId}
        options={ingredients.map(({ id, name }) => ({ value: id, label: name }))}
        onValue={(ingredientId) => onChange({ ...change, ingredientId })}
      />
      <PlanText
        field={`${field}/name`}
        path={`${path}/name`}
        label="Uses"
        value={change.name}
        check={namesSwap}
        onValue={(name) => onChange({ ...change, name })}
      />
      <PlanNumber
        field={`${field}/percent`}
        path={`${path}/percent`}
        label="Amount, if another"
        unit="% of flour"
        value={change.percent ?? null}
        check={percentCheck}
        onValue={(percent) => {
          const { percent: _, ...bare } = change
          onChange(percent === null ? bare : { ...bare, percent })
        }}
        may="be-empty"
      />
    </>
  )
}

function SkippedStep({ change, onChange }: Props<Of<'step'>>) {
  const steps = usePlanPage((page) => page.plan.steps)
  return (
    <>
      <SelectField
        label="Step"
        value={change.stepId}
        options={steps.map(({ id, name }) => ({ value: id, label: name }))}
        onValue={(stepId) => onChange({ ...change, stepId })}
      />
      <SelectField
        label="Is"
        value={change.done ? 'done' : 'left-out'}
        options={[
          { value: 'left-out', label: 'left out' },
          { value: 'done', label: 'done' },
        ]}
        onValue={(is) => onChange({ ...change, done: is === 'done' })}
      />
    </>
  )
}
