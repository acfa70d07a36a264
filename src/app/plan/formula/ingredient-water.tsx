import { useState } from 'react'
import { useTemperatureText } from '@/app/kit/field/temperature-unit.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { shareCheck } from '@/app/plan/field/field-checks.ts'
import { PlanNumber } from '@/app/plan/field/plan-number.tsx'
import { PlanTemperature } from '@/app/plan/field/plan-temperature.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import type { Ingredient } from '@/core/formula/formula-record.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import styles from './formula-section.module.css'

interface Props {
  ingredient: Ingredient
  index: number
  edit: (to: (one: Ingredient) => Ingredient) => void
}

/**
 * The water in an ingredient and its own temperature: said in one line, which a press opens into two fields. Where a text
 * there is unfinished they stand open.
 */
export function IngredientWater({ ingredient, index, edit }: Props) {
  const { id, name, waterPercent = null, celsius = null } = ingredient
  const water = `ingredient/${id}/waterPercent`
  const warmth = `ingredient/${id}/celsius`
  const path = `/formula/ingredients/${index}`
  const [open, setOpen] = useState(false)
  const unfinished = usePlanPage(({ drafts }) =>
    Object.keys(drafts).some((field) => field.startsWith(water) || field.startsWith(warmth)),
  )
  if (unfinished && !open) setOpen(true)
  const temperatureText = useTemperatureText()
  const holds = waterPercent ? `${plainNumber(waterPercent)} g of water in 100 g` : 'No water in it'
  const words = celsius === null ? 'at the room’s temperature' : `at ${temperatureText(celsius)}`
  const line = `${holds}, ${words}`
  return (
    <div className={styles.folded}>
      <Button
        kind="quiet"
        size="small"
        expanded={open}
        label={`${name}: ${line}`}
        onPress={() => setOpen(!open)}
      >
        {line}
      </Button>
      {open ? (
        <div className={styles.more}>
          <PlanNumber
            field={water}
            path={`${path}/waterPercent`}
            label={`Water in 100 g of ${name}`}
            unit="g"
            value={waterPercent}
            check={shareCheck}
            onValue={(next) =>
              edit(({ waterPercent: _, ...one }) =>
                next === null ? one : { ...one, waterPercent: next },
              )
            }
            may="be-empty"
          />
          <PlanTemperature
            field={warmth}
            path={`${path}/celsius`}
            label={`Temperature of ${name}, if not the room’s`}
            value={celsius}
            range="kitchen"
            onValue={(next) =>
              edit(({ celsius: _, ...one }) => (next === null ? one : { ...one, celsius: next }))
            }
            may="be-empty"
          />
        </div>
      ) : null}
    </div>
  )
}
