import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { minutesCheck, visibleName, wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanTemperature } from '@/app/plan/field/plan-temperature.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { unsaidRecoverySeconds, usualPullSeconds } from '@/core/clock-plan/room-of-day.ts'
import { withEnds, withRepeats } from '@/core/plan-edits/method/ends-by.ts'
import { stepKindNames } from '@/core/plan-edits/method/step-presets.ts'
import { inStep } from '@/core/plan-edits/parts/in-part.ts'
import { most } from '@/core/record/most.ts'
import { type Step, stepKinds } from '@/core/trial/step.ts'
import { EndsByFields } from './ends-by-fields.tsx'
import styles from './method-section.module.css'

const namesStep = visibleName("the step's name")
const repeatsCheck = wholeBetween(1, most.repeats)
const secondsCheck = wholeBetween(0, 3600)
const kindOptions = stepKinds.map((kind) => ({ value: kind, label: stepKindNames[kind] }))
const resources = ['hands', 'mixer', 'oven'] as const

/** The fields of one step: minutes on screen, seconds in the plan. */
export function StepFields({ step, index }: { step: Step; index: number }) {
  const { change } = usePlanActions()
  const { id } = step
  const recoverySeconds = usePlanPage((page) => unsaidRecoverySeconds(page.plan.day))
  const severalPeople = usePlanPage(
    ({ plan }) => plan.pairsOfHands > 1 || (plan.day?.helpers ?? []).length > 0,
  )
  const path = `/steps/${index}`
  const edit = (next: Partial<Step>) =>
    change((plan) => inStep(plan, id, (each) => ({ ...each, ...next })))
  const minutes = (
    key: 'handsSeconds' | 'waitSeconds' | 'earlySeconds' | 'lateSeconds',
    label: string,
    hint?: string,
  ) => (
    <PlanNumber
      field={`step/${id}/${key}`}
      path={`${path}/${key}`}
      label={label}
      unit="min"
      digits={3}
      value={step[key] / 60}
      check={minutesCheck}
      onValue={(value) => edit({ [key]: value * 60 })}
      {...(hint ? { hint } : {})}
    />
  )
  const ovenSeconds = (key: 'pullSeconds' | 'recoverySeconds', label: string, usual: number) => (
    <PlanNumber
      field={`step/${id}/${key}`}
      path={`${path}/${key}`}
      label={label}
      unit="s"
      value={step[key] ?? null}
      check={secondsCheck}
      hint={`${usual} s where nothing is said`}
      onValue={(value) =>
        change((plan) =>
          inStep(plan, id, ({ [key]: _, ...each }) =>
            value === null ? each : { ...each, [key]: value },
          ),
        )
      }
      may="be-empty"
    />
  )
  return (
    <div className={styles.fields}>
      <FieldRow>
        <PlanText
          field={`step/${id}/name`}
          path={`${path}/name`}
          label="Name"
          value={step.name}
          check={namesStep}
          onValue={(name) => edit({ name })}
        />
        <SelectField
          label="Kind"
          value={step.kind}
          options={kindOptions}
          onValue={(kind) => edit({ kind })}
        />
        <SelectField
          label="Done to"
          value={step.per === 'batch' && step.once ? 'all' : step.per}
          options={[
            { value: 'all', label: 'all doughs at once' },
            { value: 'batch', label: 'each batch' },
            { value: 'piece', label: 'each piece' },
          ]}
          onValue={(per) =>
            change((plan) =>
              inStep(plan, id, ({ once: _, ...each }) =>
                per === 'all' ? { ...each, per: 'batch', once: true } : { ...each, per },
              ),
            )
          }
        />
        <PlanNumber
          field={`step/${id}/repeats`}
          path={`${path}/repeats`}
          label="How many times"
          value={step.repeats}
          check={repeatsCheck}
          onValue={(repeats) => change((plan) => withRepeats(plan, id, repeats))}
        />
      </FieldRow>
      <NumberGrid>
        {minutes('handsSeconds', 'Hands on')}
        {minutes('waitSeconds', 'Wait')}
        {step.endsBy.by === 'clock' ? minutes('earlySeconds', 'May end early by') : null}
        {minutes('lateSeconds', 'May end late by')}
        <PlanTemperature
          field={`step/${id}/celsius`}
          path={`${path}/celsius`}
          label="At"
          value={step.celsius ?? null}
          range="oven"
          onValue={(celsius) =>
            change((plan) =>
              inStep(plan, id, ({ celsius: _, ...each }) =>
                celsius === null ? each : { ...each, celsius },
              ),
            )
          }
          may="be-empty"
        />
        {step.kind === 'bake'
          ? ovenSeconds('pullSeconds', 'Pulling takes', usualPullSeconds)
          : null}
        {step.kind === 'bake'
          ? ovenSeconds('recoverySeconds', 'Hot again after a load', recoverySeconds)
          : null}
      </NumberGrid>
      <EndsByFields
        step={step}
        path={path}
        onEnds={(endsBy) => change((plan) => withEnds(plan, [id], endsBy))}
      />
      <Choice
        label="Occupies while at work"
        row
        value={usesKey(step.uses)}
        options={[
          { value: 'none', label: 'nothing' },
          { value: 'hands', label: 'hands' },
          { value: 'hands+mixer', label: 'hands and mixer' },
          { value: 'mixer', label: 'mixer' },
          { value: 'hands+oven', label: 'hands and oven' },
          { value: 'oven', label: 'oven' },
        ]}
        onValue={(key) => edit({ uses: resources.filter((each) => key.includes(each)) })}
      />
      {step.samePerson || (severalPeople && step.handsSeconds > 0) ? (
        <Switch
          label="The same person does it for all doughs"
          on={step.samePerson === true}
          onSwitch={(on) =>
            change((plan) =>
              inStep(plan, id, ({ samePerson: _, ...each }) =>
                on ? { ...each, samePerson: true } : each,
              ),
            )
          }
        />
      ) : null}
    </div>
  )
}

type UsesKey = 'none' | 'hands' | 'hands+mixer' | 'mixer' | 'hands+oven' | 'oven'

function usesKey(uses: Step['uses']): UsesKey | null {
  const key = resources.filter((each) => uses.includes(each)).join('+') || 'none'
  return key === 'mixer+oven' || key === 'hands+mixer+oven' ? null : (key as UsesKey)
}
