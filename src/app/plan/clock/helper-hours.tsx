import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import type { DayWishes } from '@/core/trial/day-wishes.ts'
import { MomentFields } from './time-fields.tsx'

/** The helpers in the order they were added: at most so many. */
const helperNames = ['first', 'second', 'third']

interface HelperHoursProps {
  helpers: NonNullable<DayWishes['helpers']>
  fixed: NonNullable<DayWishes['fixed']>
  zone: string
  edit: (next: (day: DayWishes) => DayWishes) => void
}

/** From when to when each helper is there, and one more. */
export function HelperHours({ helpers, fixed, zone, edit }: HelperHoursProps) {
  return (
    <>
      {helpers.map((helper, at) => (
        <FieldRow key={helperNames[at]}>
          <MomentFields
            field={`plan-clock/helper-${at}-comes`}
            what={`Helper ${at + 1} comes`}
            at={helper.fromAt}
            zone={zone}
            onAt={(fromAt) =>
              edit((day) => ({ ...day, helpers: helpers.with(at, { ...helper, fromAt }) }))
            }
          />
          <MomentFields
            field={`plan-clock/helper-${at}-leaves`}
            what={`Helper ${at + 1} leaves`}
            at={helper.untilAt}
            zone={zone}
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
      ))}
      {helpers.length < helperNames.length ? (
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
    </>
  )
}
