import { useId, useState } from 'react'
import { Choice } from '@/app/kit/field/choice.tsx'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { wholeBetween } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { most } from '@/core/record/most.ts'
import type { DayWishes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { civilFromText } from '@/core/wording/plan/civil-text.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import styles from './clock-page.module.css'

const mixersCheck = wholeBetween(1, most.pairsOfHands)
const fridgeCheck = wholeBetween(1, most.piecesOfSession)
const usualQuiet = { fromMinutes: 23 * 60, toMinutes: 6 * 60 + 30 }
/** The helpers in the order they were added: at most so many. */
const helperNames = ['first', 'second', 'third']
const two = (value: number) => String(value).padStart(2, '0')

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
          <MomentField
            label={fixed.what === 'eat' ? 'We eat at' : 'I start at'}
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
          <HourField
            label="The night begins at"
            minutes={quiet.fromMinutes}
            onMinutes={(fromMinutes) =>
              edit((day) => ({ ...day, quiet: { ...quiet, fromMinutes } }))
            }
          />
          <HourField
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
      {fixed
        ? helpers.map((helper, at) => (
            <FieldRow key={helperNames[at]}>
              <MomentField
                label={`Helper ${at + 1} comes at`}
                at={helper.fromAt}
                zone={plan.zone}
                onAt={(fromAt) =>
                  edit((day) => ({ ...day, helpers: helpers.with(at, { ...helper, fromAt }) }))
                }
              />
              <MomentField
                label={`Helper ${at + 1} leaves at`}
                at={helper.untilAt}
                zone={plan.zone}
                onAt={(untilAt) =>
                  edit((day) => ({ ...day, helpers: helpers.with(at, { ...helper, untilAt }) }))
                }
              />
              <Button
                size="small"
                onPress={() => edit((day) => ({ ...day, helpers: helpers.toSpliced(at, 1) }))}
              >
                Without helper {at + 1}
              </Button>
            </FieldRow>
          ))
        : null}
      {fixed && helpers.length < 3 ? (
        <Button
          size="small"
          onPress={() =>
            edit((day) => ({
              ...day,
              helpers: [...helpers, { fromAt: fixed.at - 3 * 3_600_000, untilAt: fixed.at }],
            }))
          }
        >
          Add a helper’s hours
        </Button>
      ) : null}
    </div>
  )
}

interface HourFieldProps {
  label: string
  minutes: number
  onMinutes: (minutes: number) => void
}

/** A time of day. */
function HourField({ label, minutes, onMinutes }: HourFieldProps) {
  return (
    <TimeInput
      type="time"
      label={label}
      shown={`${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`}
      mend="write hour and minute."
      read={(text) => {
        const [hour, minute] = text.split(':').map(Number)
        return hour === undefined || minute === undefined ? null : hour * 60 + minute
      }}
      onRead={onMinutes}
    />
  )
}

interface MomentFieldProps {
  label: string
  at: number
  zone: string
  onAt: (at: number) => void
}

/** A day and a time in the plan's zone. */
function MomentField({ label, at, zone, onAt }: MomentFieldProps) {
  const { year, month, day, hour, minute } = civilTime(at, zone)
  return (
    <TimeInput
      type="datetime-local"
      label={label}
      shown={`${year}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`}
      mend="write day, hour and minute."
      read={(text) => {
        const civil = civilFromText(text)
        return civil && civilMoment(civil, zone)
      }}
      onRead={onAt}
    />
  )
}

interface TimeInputProps {
  type: 'time' | 'datetime-local'
  label: string
  shown: string
  /** What to do about a text that is no time yet. */
  mend: string
  read: (text: string) => number | null
  onRead: (value: number) => void
}

/** What is typed by half stays as it is and changes nothing yet. */
function TimeInput({ type, label, shown, mend, read, onRead }: TimeInputProps) {
  const id = useId()
  const [half, setHalf] = useState<string | null>(null)
  return (
    <div className={styles.moment}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        value={half ?? shown}
        aria-invalid={half !== null ? true : undefined}
        aria-describedby={half !== null ? `${id}-trouble` : undefined}
        onChange={({ target }) => {
          const value = read(target.value)
          if (value === null) return setHalf(target.value)
          setHalf(null)
          onRead(value)
        }}
      />
      {half === null ? null : (
        <p id={`${id}-trouble`} className={styles.off}>
          {label}: {mend}
        </p>
      )}
    </div>
  )
}
