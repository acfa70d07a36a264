import { useState } from 'react'
import { TimeOfDayField } from '@/app/kit/time/time-of-day-field.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { typedTimeOfDay } from '@/core/session/press/time-of-day.ts'
import { minutesOfDayText, readAsText } from '@/core/wording/words/time-of-day-text.ts'
import { PlanField, type PlanFieldPlace } from './plan-field.tsx'

interface PlanTimeProps extends PlanFieldPlace {
  label: string
  /** From midnight. */
  minutes: number
  onMinutes: (minutes: number) => void
}

/**
 * A time of day of the plan. What can be read goes into the plan at once, and under it stands as what; what cannot stays in the
 * field as a draft, and the plan keeps the last good time.
 */
export function PlanTime({ field, path, label, minutes, onMinutes }: PlanTimeProps) {
  const draftText = usePlanPage((page) => page.drafts[field])
  const { draft } = usePlanActions()
  const [typed, setTyped] = useState<string | null>(null)
  const text = typed ?? draftText ?? minutesOfDayText(minutes)
  const type = (next: string) => {
    setTyped(next)
    const time = typedTimeOfDay(next)
    draft(field, time ? null : next)
    if (time) onMinutes(time.hour * 60 + time.minute)
  }
  return (
    <PlanField
      field={field}
      {...(path ? { path } : {})}
      label={label}
      unfinished={draftText !== undefined}
    >
      <TimeOfDayField
        label={label}
        text={text}
        onText={type}
        onLeave={() => setTyped(null)}
        hint={typedTimeOfDay(text) ? readAsText(text, minutes) : undefined}
      />
    </PlanField>
  )
}
