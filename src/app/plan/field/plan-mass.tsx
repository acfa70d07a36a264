import type { ReactNode } from 'react'
import { massEntry } from '@/app/kit/field/mass-entry.ts'
import type { PlanFieldPlace } from './plan-field.tsx'
import { PlanNumber } from './plan-number.tsx'

interface PlanMassProps extends PlanFieldPlace {
  label: string
  /** Grams, as the plan keeps it. */
  value: number | null
  /** What is wrong with so many grams. */
  check: (grams: number) => string | undefined
  hint?: ReactNode
}

type Needed = PlanMassProps & { onValue: (grams: number) => void; may?: undefined }
type Optional = PlanMassProps & { onValue: (grams: number | null) => void; may: 'be-empty' }

/** A weight of the plan, shown and typed in the unit that the person chose, kept in grams. */
export function PlanMass(props: Needed | Optional) {
  const { field, path, label, value, check, hint } = props
  const entry = massEntry()
  const shared = {
    ...{ field: entry.draftKey(field), label, unit: entry.unit, check: entry.check(check) },
    ...(path === undefined ? {} : { path }),
    ...(hint === undefined ? {} : { hint }),
    value: entry.shown(value),
  }
  if (props.may === undefined)
    return <PlanNumber {...shared} onValue={(typed) => props.onValue(entry.grams(typed))} />
  return (
    <PlanNumber
      {...shared}
      onValue={(typed) => props.onValue(typed === null ? null : entry.grams(typed))}
      may="be-empty"
    />
  )
}
