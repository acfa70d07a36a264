import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { wholeBetween } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanTime } from '@/app/plan/field/plan-time.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { most } from '@/core/record/most.ts'
import type { DayWishes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import styles from './clock-page.module.css'
import { HelperHours } from './helper-hours.tsx'
import { MomentFields } from './time-fields.tsx'

const mixersCheck = wholeBetween(1, most.pairsOfHands)
const fridgeCheck = wholeBetween(1, most.piecesOfSession)
const usualQuiet = { fromMinutes: 23 * 60, toMinutes: 6 * 60 + 30 }

/** What is fixed of the day: when people eat or one starts, the hours in which nobody works, who helps when. */
export function DayWishesFields({ plan }: { plan: Plan }) {
  const { change } = usePlanActions()
  const { now } = useServices()
  const wishes = plan.day ?? {}
  const { fixed, quiet, helpers = [] } = wishes
  const edit = (next: (day: DayWishes) => DayWishes) =>
    change((each) => {
      const { kept: _, ...day } = each.day ?? {}
      return { ...each, day: next(day) }
    })
  const soon = () => Math.ceil((now() + 24 * 3_600_000) / 3_600_000) * 3_600_000
  const fix = (what: 'eat' | 'start' | 'none') =>
    edit(({ fixed: before, ...day }) =>
      what === 'none'
        ? day
        : {
            ...(before ? day : { quiet: usualQuiet, ...day }),
            fixed: { what, at: before?.at ?? soon() },
          },
    )
  return (
    <div className={styles.wishes}>
      <Choice
        label="Plan the day"
        row
        value={fixed?.what ?? 'none'}
        options={[
          { value: 'eat', label: 'back from when we eat' },
          { value: 'start', label: 'on from when I start' },
          { value: 'none', label: 'without a date' },
        ]}
        onValue={fix}
      />
      <FieldRow>
        {fixed ? (
          <MomentFields
            field="plan-clock/fixed-at"
            what={fixed.what === 'eat' ? 'We eat' : 'I start'}
            at={fixed.at}
            zone={plan.zone}
            onAt={(at) => edit((day) => ({ ...day, fixed: { ...fixed, at } }))}
          />
        ) : null}
      </FieldRow>
      {fixed ? (
        <Switch
          label="Nobody works at night"
          on={quiet !== undefined}
          onSwitch={(on) =>
            edit(({ quiet: _, ...day }) => (on ? { ...day, quiet: usualQuiet } : day))
          }
        />
      ) : null}
      {fixed && quiet ? (
        <FieldRow>
          <PlanTime
            field="plan-clock/night-begins"
            label="The night begins at"
            minutes={quiet.fromMinutes}
            onMinutes={(fromMinutes) =>
              edit((day) => ({ ...day, quiet: { ...quiet, fromMinutes } }))
            }
          />
          <PlanTime
            field="plan-clock/night-ends"
            label="The night ends at"
            minutes={quiet.toMinutes}
            onMinutes={(toMinutes) => edit((day) => ({ ...day, quiet: { ...quiet, toMinutes } }))}
          />
        </FieldRow>
      ) : null}
      <FieldRow>
        <PlanNumber
          field="plan-clock/mixers"
          path="/day/mixers"
          label="Mixers at once"
          value={wishes.mixers ?? null}
          check={mixersCheck}
          hint="One where nothing is said"
          may="be-empty"
          onValue={(mixers) =>
            edit(({ mixers: _, ...day }) => (mixers === null ? day : { ...day, mixers }))
          }
        />
        <PlanNumber
          field="plan-clock/fridge"
          path="/day/fridgePlaces"
          label="The fridge holds at once"
          value={wishes.fridgePlaces ?? null}
          check={fridgeCheck}
          hint="Tubs, or pieces that prove cold; all where nothing is said"
          may="be-empty"
          onValue={(fridgePlaces) =>
            edit(({ fridgePlaces: _, ...day }) =>
              fridgePlaces === null ? day : { ...day, fridgePlaces },
            )
          }
        />
      </FieldRow>
      {fixed ? <HelperHours helpers={helpers} fixed={fixed} zone={plan.zone} edit={edit} /> : null}
    </div>
  )
}
