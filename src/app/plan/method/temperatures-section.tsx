import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { between } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanTemperature } from '@/app/plan/field/plan-temperature.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanSection } from '@/app/plan/page/plan-section.tsx'
import type { MixingWay } from '@/core/kitchen/mixing-way.ts'
import {
  withMatchedWater,
  withMixingWay,
  withMixingWork,
  withTemperaturePlanned,
  withTemperatures,
} from '@/core/plan-edits/method/temperatures.ts'
import type { TemperaturePlan } from '@/core/trial/plan-record.ts'
import { mixingWayOptions } from '@/core/wording/weighing/mixing-way-text.ts'

const workCheck = between(-30, 100, 'kJ/kg')

/** Temperatures known before the mix, from which each batch's water follows. */
export function TemperaturesSection() {
  const temperature = usePlanPage((page) => page.plan.temperature)
  const { change } = usePlanActions()
  const set = (next: Partial<TemperaturePlan>) => change((plan) => withTemperatures(plan, next))
  return (
    <PlanSection id="plan-temperatures">
      <Switch
        label="Plan the dough temperature"
        hint="With one water for all, wetter doughs leave the mixer cooler where it is cool, warmer where it is warm."
        on={temperature !== null}
        onSwitch={(on) => change((plan) => withTemperaturePlanned(plan, on))}
      />
      {temperature ? (
        <>
          <NumberGrid>
            {(
              [
                ['wantedDoughCelsius', 'Wanted dough'],
                ['flourCelsius', 'Flour'],
                ['roomCelsius', 'Room'],
              ] as const
            ).map(([key, label]) => (
              <PlanTemperature
                key={key}
                field={`temperature/${key}`}
                path={`/temperature/${key}`}
                label={label}
                value={temperature[key]}
                range="kitchen"
                onValue={(value) => set({ [key]: value })}
              />
            ))}
            <PlanNumber
              field="temperature/work"
              path="/temperature/mixingKilojoulesPerKilogram"
              label="Mixing work, if known"
              unit="kJ a kg flour"
              value={temperature.mixingKilojoulesPerKilogram ?? null}
              check={workCheck}
              onValue={(work) => change((plan) => withMixingWork(plan, work))}
              may="be-empty"
            />
          </NumberGrid>
          <SelectField
            label="Mixed"
            hint="Hands and machines warm a dough unlike. Once a dough was read, its own warmth counts."
            value={temperature.mixedBy ?? ''}
            options={[
              { value: '', label: 'as the mixer’s entry or the steps say' },
              ...mixingWayOptions,
            ]}
            onValue={(way: MixingWay | '') => change((plan) => withMixingWay(plan, way))}
          />
          <Switch
            label="Match the water to each batch"
            hint="Each batch gets water of its own temperature, so that all doughs leave the mixer equally warm."
            on={temperature.matched}
            onSwitch={(matched) => change((plan) => withMatchedWater(plan, matched))}
          />
        </>
      ) : null}
    </PlanSection>
  )
}
