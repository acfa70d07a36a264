import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { useTroubleAt } from '@/app/plan/field/plan-field.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { withWrittenFirst } from '@/core/plan-edits/start/with-written-first.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

/** The level hoped to do as well as the best, and whether the usual is what every level is compared with: both written first. */
export function HopedLevel({ locked }: { locked: boolean }) {
  const plan = usePlanPage((page) => page.plan)
  const { change } = usePlanActions()
  const trouble = useTroubleAt('/writtenFirst/hopedLevelId')
  const { hopedLevelId, againstUsual } = writtenFirst(plan)
  const { levels, factor, expectation } = plan
  if (levels.length < 2 && hopedLevelId === null) return null
  const known = hopedLevelId === null || levels.some(({ id }) => id === hopedLevelId)
  const mayAskUsual = againstUsual || factor.acts.on === 'choice' || expectation === null
  return (
    <div data-path="/writtenFirst">
      <FieldRow>
        <SelectField
          label="Which level do you hope will do as well as the best?"
          hint="An easy one. Named before the mix it needs fewer sessions to be shown."
          value={known ? (hopedLevelId ?? '') : 'gone'}
          options={[
            { value: '', label: 'none in particular' },
            ...(known ? [] : [{ value: 'gone', label: 'choose a level', disabled: true }]),
            ...levels.map((level) => ({
              value: level.id,
              label: levelText(level, factor.unitOfMeasure),
            })),
          ]}
          onValue={(picked) =>
            change((before) =>
              withWrittenFirst(before, { hopedLevelId: picked === '' ? null : picked }),
            )
          }
          problem={trouble}
          disabled={locked}
        />
        {mayAskUsual ? (
          <Switch
            label="Compare each level with my usual alone"
            hint="Instead of every level with every other: finds more against the usual, says nothing of the rest."
            on={againstUsual}
            onSwitch={(on) => change((before) => withWrittenFirst(before, { againstUsual: on }))}
            disabled={locked}
          />
        ) : null}
      </FieldRow>
      <TroubleHere at="/writtenFirst/againstUsual" />
    </div>
  )
}
