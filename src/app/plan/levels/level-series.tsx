import { memo, useState } from 'react'
import { NumberField } from '@/app/kit/field/number-field.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { levelCheck, wholeBetween } from '@/app/plan/field/field-checks.ts'
import { NumberGrid } from '@/app/plan/field/number-grid.tsx'
import { usePlanPage, usePlanStore } from '@/app/plan/page/plan-page-context.ts'
import { useServices } from '@/app/services/services.ts'
import { withSeries } from '@/core/plan-edits/levels/level-series.ts'
import { levelsBetween, mostLevels } from '@/core/trial/levels-between.ts'
import { plainNumber, shortUnit } from '@/core/units/number-text.ts'
import { seriesRefusal } from '@/core/wording/plan/refusals.ts'

const countCheck = wholeBetween(2, mostLevels)

/** First, last and how many: fills the levels evenly. Levels that are there already keep their marks. */
export const LevelSeries = memo(function LevelSeries() {
  const unit = usePlanPage((page) => shortUnit(page.plan.factor.unitOfMeasure))
  const store = usePlanStore()
  const { newId } = useServices()
  const [first, setFirst] = useState<number | null>(null)
  const [last, setLast] = useState<number | null>(null)
  const [count, setCount] = useState<number | null>(5)
  const series =
    first === null || last === null || count === null ? null : levelsBetween(first, last, count)
  const fill = () => {
    if (!series?.ok) return
    store
      .getState()
      .changeSaid('Levels replaced', (plan) => withSeries(plan, series.values, newId), 'level/')
  }
  return (
    <NumberGrid>
      <NumberField label="First" unit={unit} value={first} onValue={setFirst} check={levelCheck} />
      <NumberField label="Last" unit={unit} value={last} onValue={setLast} check={levelCheck} />
      <NumberField
        label="How many"
        value={count}
        onValue={setCount}
        check={countCheck}
        problem={series && !series.ok ? seriesRefusal(series) : undefined}
        hint={series?.ok ? series.values.map(plainNumber).join(' · ') : undefined}
      />
      <Button onPress={fill} disabled={!series?.ok}>
        Fill the levels
      </Button>
    </NumberGrid>
  )
})
