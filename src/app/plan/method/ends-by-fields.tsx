import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { between } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanTemperature } from '@/app/plan/field/plan-temperature.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { type PickedEnd, startedEnd } from '@/core/plan-edits/method/ends-by.ts'
import type { EndsBy, Step } from '@/core/trial/step.ts'

interface Props {
  step: Step
  path: string
  onEnds: (endsBy: EndsBy) => void
}

const riseCheck = between(1, 1000, '%')
const lossCheck = between(1, 60, '%')
const options = [
  { value: 'clock', label: 'the clock' },
  { value: 'rise', label: 'a mark: it has risen' },
  { value: 'poke', label: 'a mark: the poke test' },
  { value: 'windowpane', label: 'a mark: the windowpane' },
  { value: 'bake-loss', label: 'a mark: its bake loss' },
  { value: 'colour', label: 'a mark: its colour' },
  { value: 'own', label: 'a mark of my own' },
  { value: 'dough', label: 'a reading: dough temperature' },
  { value: 'oven-floor', label: 'a reading: oven floor' },
  { value: 'core', label: 'a reading: core temperature' },
] as const

/** What ends a step: the clock, a mark that is seen or felt, or a reading. */
export function EndsByFields({ step, path, onEnds }: Props) {
  const { id, endsBy } = step
  const picked: PickedEnd =
    endsBy.by === 'clock' ? 'clock' : endsBy.by === 'mark' ? endsBy.mark : endsBy.of
  return (
    <FieldRow>
      <SelectField
        label="Ends by"
        value={picked}
        options={options}
        onValue={(next) => onEnds(startedEnd(next))}
      />
      {endsBy.by === 'mark' && endsBy.mark === 'rise' ? (
        <PlanNumber
          field={`step/${id}/rise`}
          path={`${path}/endsBy/risePercent`}
          label="Risen by"
          unit="%"
          value={endsBy.risePercent ?? null}
          check={riseCheck}
          onValue={(risePercent) => onEnds({ ...endsBy, risePercent })}
        />
      ) : null}
      {endsBy.by === 'mark' && endsBy.mark === 'bake-loss' ? (
        <PlanNumber
          field={`step/${id}/loss`}
          path={`${path}/endsBy/lossPercent`}
          label="Lighter by"
          unit="%"
          value={endsBy.lossPercent ?? null}
          check={lossCheck}
          onValue={(lossPercent) => onEnds({ ...endsBy, lossPercent })}
        />
      ) : null}
      {endsBy.by === 'mark' && endsBy.mark === 'own' ? (
        <PlanText
          field={`step/${id}/mark`}
          path={`${path}/endsBy/text`}
          label="The mark"
          value={endsBy.text ?? ''}
          maxLength={5000}
          onValue={(text) => onEnds({ ...endsBy, text })}
        />
      ) : null}
      {endsBy.by === 'reading' ? (
        <PlanTemperature
          field={`step/${id}/reading`}
          path={`${path}/endsBy/celsius`}
          label="At a reading of"
          value={endsBy.celsius}
          range="oven"
          onValue={(celsius) => onEnds({ ...endsBy, celsius })}
        />
      ) : null}
    </FieldRow>
  )
}
