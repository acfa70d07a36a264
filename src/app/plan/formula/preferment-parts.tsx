import { SelectField } from '@/app/kit/field/select-field.tsx'
import { percentCheck } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import type { Preferment } from '@/core/formula/formula-record.ts'
import { withPart } from '@/core/plan-edits/formula/preferment-part.ts'

interface Props {
  preferment: Preferment
  path: string
  edit: (to: (one: Preferment) => Preferment) => void
}

/** The parts of a preferment in percent of its own flour; an emptied part leaves it. */
export function PrefermentParts({ preferment, path, edit }: Props) {
  const ingredients = usePlanPage((page) => page.plan.formula.ingredients)
  const free = ingredients.filter(({ id }) =>
    preferment.parts.every((part) => part.ingredientId !== id),
  )
  return (
    <NumberGrid>
      {preferment.parts.map(({ ingredientId, percent }, at) => (
        <PlanNumber
          key={ingredientId}
          field={`preferment/${preferment.id}/part/${ingredientId}`}
          path={`${path}/parts/${at}/percent`}
          label={ingredients.find(({ id }) => id === ingredientId)?.name ?? 'Part'}
          unit="% of its flour"
          value={percent}
          digits={4}
          check={percentCheck}
          onValue={(next) => edit((one) => withPart(one, ingredientId, next))}
          may="be-empty"
        />
      ))}
      {free.length > 0 ? (
        <SelectField
          label="Add a part"
          value=""
          options={[
            { value: '', label: 'Choose one' },
            ...free.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onValue={(ingredientId) => {
            if (ingredientId !== '') edit((one) => withPart(one, ingredientId, 1))
          }}
        />
      ) : null}
    </NumberGrid>
  )
}
