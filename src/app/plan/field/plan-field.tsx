import { type ReactNode, useEffect } from 'react'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import styles from './plan-field.module.css'

/** What every field of the plan carries besides its kit control. */
export interface PlanFieldPlace {
  /** Names the field for good, by ids: the key of its unfinished text. */
  field: string
  /** Where its value stands in the plan, by JSON Pointer; the plan's troubles find the field by it. */
  path?: string
}

interface Props extends PlanFieldPlace {
  label: string
  /** There is unfinished text in it. */
  unfinished: boolean
  wide?: boolean
  children: ReactNode
}

/** The frame of a field that lists of troubles can jump to. */
export function PlanField({ field, path, label, unfinished, wide, children }: Props) {
  const { markUnfinished: mark } = usePlanActions()
  useEffect(() => {
    if (!unfinished) return
    mark(field, label)
    return () => mark(field, null)
  }, [unfinished, field, label, mark])
  return (
    <div data-field={field} data-path={path} className={wide ? styles.wide : styles.plain}>
      {children}
    </div>
  )
}

/** The message of the first trouble at a place of the plan, or nothing. */
export function useTroubleAt(path: string | undefined): string | undefined {
  return usePlanPage((page) =>
    path === undefined ? undefined : page.troubles.find((each) => each.path === path)?.text,
  )
}
