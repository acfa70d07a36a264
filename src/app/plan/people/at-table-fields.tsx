import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { type AtTableChange, withAtTable } from '@/core/plan-edits/people/at-table.ts'
import { most } from '@/core/record/most.ts'
import { AloneFields } from './alone-fields.tsx'
import { RankingFields } from './ranking-fields.tsx'

const secondsCheck = wholeBetween(0, 3600)
const countCheck = wholeBetween(1, most.piecesOfSession)

/** How servings are offered: rests and pauses, a hidden duplicate or a second go, and the guess at the end. */
export function AtTableFields() {
  const atTable = usePlanPage((page) => page.plan.atTable) ?? {}
  const levels = usePlanPage((page) => page.plan.levels)
  const serving = usePlanPage((page) => page.plan.serving)
  const { change } = usePlanActions()
  const set = (next: AtTableChange) => change((plan) => withAtTable(plan, next))
  const { again = [] } = atTable
  const served = again.length === 0 ? 'once' : again.length === levels.length ? 'all' : again[0]
  return (
    <>
      <NumberGrid>
        <PlanNumber
          field="rest"
          path="/atTable/restSeconds"
          label="Rest between two samples"
          hint="Water and a bite of plain bread; the next code comes on a page of its own."
          unit="s"
          value={atTable.restSeconds ?? null}
          check={secondsCheck}
          onValue={(restSeconds) => set({ restSeconds })}
          may="be-empty"
        />
        <PlanNumber
          field="pause-after"
          path="/atTable/pauseAfter"
          label="A longer pause after"
          hint="So many samples, such as 4."
          value={atTable.pauseAfter ?? null}
          check={countCheck}
          onValue={(pauseAfter) => set({ pauseAfter })}
          may="be-empty"
        />
        <PlanNumber
          field="pause"
          path="/atTable/pauseSeconds"
          label="Which lasts"
          unit="s"
          value={atTable.pauseSeconds ?? null}
          check={secondsCheck}
          onValue={(pauseSeconds) => set({ pauseSeconds })}
          may="be-empty"
        />
      </NumberGrid>
      {serving === 'rested' || again.length > 0 ? (
        <SelectField
          label="Served a second time"
          hint="Under a code of its own: it shows how each taster repeats what they said."
          value={served ?? 'once'}
          options={[
            { value: 'once', label: 'nothing' },
            ...levels.map(({ id, label }) => ({
              value: id,
              label: `${label}, a hidden duplicate`,
            })),
            { value: 'all', label: 'everything, in a second go' },
          ]}
          onValue={(picked) =>
            set({
              again:
                picked === 'once' ? [] : picked === 'all' ? levels.map(({ id }) => id) : [picked],
            })
          }
        />
      ) : null}
      <AloneFields />
      <TroubleHere at="/atTable" />
      <RankingFields />
      <Switch
        label="Ask at the end which was the usual one"
        hint="Who finds it more often than chance was not blind to it."
        on={atTable.asksUsual ?? false}
        onSwitch={(asksUsual) => set({ asksUsual })}
      />
    </>
  )
}
