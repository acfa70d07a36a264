import { memo } from 'react'
import { FieldRow } from '@/app/kit/field/field-row.tsx'
import { SelectField } from '@/app/kit/field/select-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { shareCheck, visibleName } from '@/app/plan/field/field-checks.ts'
import { PlanMass } from '@/app/plan/field/plan-mass.tsx'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanTemperature } from '@/app/plan/field/plan-temperature.tsx'
import { PlanText } from '@/app/plan/field/plan-text.tsx'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { TroubleHere } from '@/app/plan/page/trouble-here.tsx'
import { useTakeOut } from '@/app/plan/page/use-take-out.ts'
import type { Preferment } from '@/core/formula/formula-record.ts'
import { inPreferment } from '@/core/plan-edits/parts/in-part.ts'
import { takeOutPreferment } from '@/core/plan-edits/take-out/take-out.ts'
import { massRange } from '@/core/units/mass-text.ts'
import { massBetweenText } from '@/core/wording/words/field-check-text.ts'
import styles from './formula-section.module.css'
import { PrefermentParts } from './preferment-parts.tsx'

interface Props {
  preferment: Preferment
  index: number
}

const clingsCheck = (grams: number) =>
  grams >= 0 && grams <= 1000 ? undefined : massBetweenText(0, 1000)
const namesPreferment = visibleName("the preferment's name")
const kinds = [
  { value: 'poolish', label: 'poolish' },
  { value: 'biga', label: 'biga' },
  { value: 'sponge', label: 'sponge' },
  { value: 'starter', label: 'starter' },
  { value: 'soaker', label: 'soaker' },
  { value: 'other', label: 'other' },
] as const

/** What ferments or soaks ahead: how much of the flour it takes, and its parts in percent of its own flour. */
export const PrefermentRow = memo(function PrefermentRow({ preferment, index }: Props) {
  const { id, name, kind, flourSharePercent, celsius, clingsGrams } = preferment
  const { change } = usePlanActions()
  const acts = usePlanPage((page) => page.plan.factor.acts)
  const takeOut = useTakeOut()
  const path = `/formula/preferments/${index}`
  const moves = 'prefermentId' in acts && acts.prefermentId === id
  const edit = (to: (one: Preferment) => Preferment) => change((plan) => inPreferment(plan, id, to))
  return (
    <div className={styles.preferment} data-path={path}>
      <FieldRow>
        <PlanText
          field={`preferment/${id}/name`}
          path={`${path}/name`}
          label="Preferment"
          value={name}
          check={namesPreferment}
          onValue={(next) => edit((one) => ({ ...one, name: next }))}
        />
        <SelectField
          label="Kind"
          value={kind}
          options={kinds}
          onValue={(next) => edit((one) => ({ ...one, kind: next }))}
        />
        {moves ? (
          <span className={styles.moves}>its share of the flour is set by the levels</span>
        ) : (
          <PlanNumber
            field={`preferment/${id}/share`}
            path={`${path}/flourSharePercent`}
            label="Share of all flour"
            unit="%"
            value={flourSharePercent}
            check={shareCheck}
            onValue={(next) => edit((one) => ({ ...one, flourSharePercent: next }))}
          />
        )}
        <PlanTemperature
          field={`preferment/${id}/celsius`}
          path={`${path}/celsius`}
          label="Temperature at the mix"
          value={celsius ?? null}
          range="kitchen"
          onValue={(next) =>
            edit(({ celsius: _, ...one }) => (next === null ? one : { ...one, celsius: next }))
          }
          may="be-empty"
        />
        {kind === 'starter' ? null : (
          <PlanMass
            field={`preferment/${id}/clings`}
            path={`${path}/clingsGrams`}
            label="Stays in the jar"
            hint={`Weigh the jar empty and scraped out; ${massRange(5, 15)} is usual. The sheet makes that much more.`}
            value={clingsGrams ?? null}
            check={clingsCheck}
            onValue={(next) =>
              edit(({ clingsGrams: _, ...one }) =>
                next === null ? one : { ...one, clingsGrams: next },
              )
            }
            may="be-empty"
          />
        )}
      </FieldRow>
      <PrefermentParts preferment={preferment} path={path} edit={edit} />
      <TroubleHere at={path} />
      <div>
        <Button
          kind="quiet"
          size="small"
          disabled={moves}
          label={`Remove ${name}`}
          onPress={() => takeOut((plan) => takeOutPreferment(plan, id))}
        >
          Remove {name}
        </Button>
      </div>
    </div>
  )
})
