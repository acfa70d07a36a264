import { type ReactNode, useState } from 'react'
import { InlinePress } from '@/app/kit/press/inline-press.tsx'
import { percentCheck, shareCheck } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import type { Ingredient, Preferment } from '@/core/formula/formula-record.ts'
import { inIngredient, inPreferment } from '@/core/plan-edits/parts/in-part.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { movedBy } from '@/core/wording/plan/moved-by.ts'
import { levelShort } from '@/core/wording/words/level-text.ts'
import styles from './weigh-ledger.module.css'

/** An ingredient's percent of the flour: a press opens its field in place. What the factor moves is its levels' matter. */
export function PercentValue({ ingredient, index }: { ingredient: Ingredient; index: number }) {
  const { id, name, percent } = ingredient
  const moves = usePlanPage((page) => movedBy(page.plan, id) !== null)
  const { change } = usePlanActions()
  if (moves) return <MovedRange />
  return (
    <InPlace value={percent} label={`${name}, percent of flour`}>
      <PlanNumber
        field={`ingredient/${id}/percent`}
        path={`/formula/ingredients/${index}/percent`}
        label={`${name}, percent of flour`}
        hideLabel
        value={percent}
        digits={4}
        check={percentCheck}
        onValue={(next) =>
          change((plan) => inIngredient(plan, id, (one) => ({ ...one, percent: next })))
        }
      />
    </InPlace>
  )
}

/** The share of all flour that goes into a preferment, in the same way. */
export function ShareValue({ preferment, index }: { preferment: Preferment; index: number }) {
  const { id, name, flourSharePercent } = preferment
  const acts = usePlanPage((page) => page.plan.factor.acts)
  const { change } = usePlanActions()
  if ('prefermentId' in acts && acts.prefermentId === id) return <MovedRange />
  return (
    <InPlace value={flourSharePercent} label={`${name}, share of all flour`}>
      <PlanNumber
        field={`preferment/${id}/share`}
        path={`/formula/preferments/${index}/flourSharePercent`}
        label={`${name}, share of all flour`}
        hideLabel
        value={flourSharePercent}
        check={shareCheck}
        onValue={(next) =>
          change((plan) => inPreferment(plan, id, (one) => ({ ...one, flourSharePercent: next })))
        }
      />
    </InPlace>
  )
}

function MovedRange() {
  const levels = usePlanPage((page) => page.plan.levels)
  const [first] = levels
  const last = levels.at(-1)
  if (!first || !last) return null
  return (
    <span className={styles.moved}>
      {levels.length === 1 ? levelShort(first) : `${levelShort(first)} to ${levelShort(last)}`}
    </span>
  )
}

interface InPlaceProps {
  value: number
  label: string
  children: ReactNode
}

/** A figure that a press turns into its field, until focus leaves it. */
function InPlace({ value, label, children }: InPlaceProps) {
  const [open, setOpen] = useState(false)
  if (!open)
    return (
      <span className={styles.percent}>
        <InlinePress label={`${label}: ${plainNumber(value)}`} onPress={() => setOpen(true)}>
          {plainNumber(value)}
        </InlinePress>
      </span>
    )
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only watches focus leave the field inside
    <span
      className={styles.field}
      ref={(box) => {
        const input = box?.querySelector('input')
        if (input && !box?.contains(document.activeElement)) input.focus()
      }}
      onBlur={(event) => {
        const stands = event.target.getAttribute('aria-invalid') !== 'true'
        if (stands && !event.currentTarget.contains(event.relatedTarget)) setOpen(false)
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && event.target instanceof HTMLElement) event.target.blur()
      }}
    >
      {children}
    </span>
  )
}
