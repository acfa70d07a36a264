import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { moreThanNothing } from '@/app/plan/field/field-checks.ts'
import { useTroubleAt } from '@/app/plan/field/plan-field.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { inResponse } from '@/core/plan-edits/parts/in-part.ts'
import { presetsLeft, withPreset } from '@/core/plan-edits/responses/main-response.ts'
import { responsePresets } from '@/core/plan-edits/responses/response-presets.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { responseUnit } from '@/core/wording/words/unit-name.ts'

const marginCheck = moreThanNothing(1000)

/** The one answer the verdict is about, and the smallest difference in it worth caring for. A preset may be picked at once. */
export function MainResponse({ locked }: { locked: boolean }) {
  const responses = usePlanPage((page) => page.plan.responses)
  const mainId = usePlanPage((page) => page.plan.mainResponseId)
  const { change } = usePlanActions()
  const trouble = useTroubleAt('/mainResponseId')
  const { newId } = useServices()
  const main = responses.find((each) => each.id === mainId)
  const index = responses.findIndex((each) => each.id === mainId)
  const presets = presetsLeft({ responses })
  return (
    <div data-path="/mainResponseId">
      <FieldRow>
        <SelectField
          label="Main response"
          hint="What decides. Others are recorded and told beside it."
          value={mainId ?? ''}
          options={[
            ...(main ? [] : [{ value: '', label: 'Choose one' }]),
            ...responses.map((each) => ({ value: each.id, label: each.name })),
            ...presets.map(({ name }) => ({ value: `preset ${name}`, label: `${name} (add)` })),
          ]}
          onValue={(picked) => change((plan) => withMain(plan, picked, newId))}
          problem={trouble}
          disabled={locked}
        />
        {main ? (
          <PlanNumber
            field={`response/${main.id}/margin`}
            path={`/responses/${index}/margin`}
            label="Margin"
            hint="The smallest difference you would care about."
            unit={responseUnit(main)}
            value={main.margin}
            check={marginCheck}
            onValue={(margin) =>
              change((plan) => inResponse(plan, main.id, (each) => ({ ...each, margin })))
            }
            may="be-empty"
            disabled={locked}
          />
        ) : null}
      </FieldRow>
    </div>
  )
}

function withMain(plan: Plan, picked: string, newId: () => string): Plan {
  const preset = responsePresets.find(({ name }) => picked === `preset ${name}`)
  if (preset) return withPreset(plan, preset, newId(), true)
  return picked === '' ? plan : { ...plan, mainResponseId: picked }
}
