import { useId, useState } from 'react'
import control from '@/app/kit/field/control.module.css'
import { Field } from '@/app/kit/field/field.tsx'
import { PlanTime } from '@/app/plan/field/plan-time.tsx'
import { civilFromText } from '@/core/wording/plan/civil-text.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'

const two = (value: number) => String(value).padStart(2, '0')

interface MomentFieldsProps {
  /** Names the time's field for good: the key of its unfinished text. */
  field: string
  /** What comes before "on" and "at": "We eat". */
  what: string
  at: number
  zone: string
  onAt: (at: number) => void
}

/** A day and a time in the plan's zone, each in a field of its own. */
export function MomentFields({ field, what, at, zone, onAt }: MomentFieldsProps) {
  const civil = civilTime(at, zone)
  const { year, month, day, hour, minute } = civil
  return (
    <>
      <DayInput
        label={`${what} on`}
        shown={`${year}-${two(month)}-${two(day)}`}
        onDay={(text) => {
          const typed = civilFromText(`${text} ${two(hour)}:${two(minute)}`)
          if (typed) onAt(civilMoment(typed, zone))
          return typed !== null
        }}
      />
      <PlanTime
        field={field}
        label={`${what} at`}
        minutes={hour * 60 + minute}
        onMinutes={(minutes) =>
          onAt(
            civilMoment({ ...civil, hour: Math.floor(minutes / 60), minute: minutes % 60 }, zone),
          )
        }
      />
    </>
  )
}

interface DayInputProps {
  label: string
  /** As "2026-12-05". */
  shown: string
  /** Whether the text is a day, and was taken. */
  onDay: (text: string) => boolean
}

/** What is chosen by half stays as it is and changes nothing yet. */
function DayInput({ label, shown, onDay }: DayInputProps) {
  const id = useId()
  const [half, setHalf] = useState<string | null>(null)
  return (
    <Field
      id={id}
      label={label}
      problem={half === null ? undefined : `${label}: write day, month and year.`}
    >
      <input
        id={id}
        className={control.control}
        type="date"
        value={half ?? shown}
        aria-invalid={half !== null ? true : undefined}
        aria-describedby={half !== null ? `${id}-problem` : undefined}
        onChange={({ target }) => setHalf(onDay(target.value) ? null : target.value)}
      />
    </Field>
  )
}
