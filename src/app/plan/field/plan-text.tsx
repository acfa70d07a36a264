import type { ReactNode } from 'react'
import { TextField } from '@/app/kit/field/text-field.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { PlanField, type PlanFieldPlace, useTroubleAt } from './plan-field.tsx'

interface PlanTextProps extends PlanFieldPlace {
  label: string
  value: string
  onValue: (value: string) => void
  check?: (value: string) => string | undefined
  hint?: ReactNode
  hideLabel?: boolean
  placeholder?: string
  maxLength?: number
  disabled?: boolean
  wide?: boolean
}

/** A text of the plan; one that cannot stand (an empty name) stays in the field as a draft, with its message. */
export function PlanText(props: PlanTextProps) {
  const { field, path, label, value, onValue, check, wide, ...words } = props
  const text = usePlanPage((page) => page.drafts[field])
  const { draft } = usePlanActions()
  const trouble = useTroubleAt(path)
  const refused = text === undefined ? undefined : check?.(text)
  return (
    <PlanField
      field={field}
      {...(path ? { path } : {})}
      label={label}
      unfinished={text !== undefined}
      {...(wide ? { wide } : {})}
    >
      <TextField
        {...words}
        label={label}
        value={text ?? value}
        problem={refused ?? trouble}
        onValue={(next) => {
          const stands = check?.(next) === undefined
          draft(field, stands ? null : next)
          if (stands) onValue(next)
        }}
      />
    </PlanField>
  )
}
