import { memo, useDeferredValue, useMemo } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import {
  degreeSign,
  degreesText,
  degreeWords,
  stepsText,
} from '@/app/kit/field/temperature-words.ts'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useLearnedWork } from '@/app/plan/page/learned-context.ts'
import { usePlanActions, usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { coldestWaterCelsius, waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { withMatchedWater } from '@/core/plan-edits/method/temperatures.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { workSourceText } from '@/core/wording/findings/learned-text.ts'
import {
  spreadWords,
  warmthWords,
  waterWarnings,
  whyNoWater,
} from '@/core/wording/weighing/water-text.ts'
import { BatchHead } from './batch-head.tsx'
import styles from './panel.module.css'
import { UnwateredPanel } from './unwatered-panel.tsx'
import { waterRows } from './water-rows.ts'

/** Each batch's water temperature, what one water for all would do, and what cannot be had from the tap. */
export function WaterPanel() {
  return <Water plan={useDeferredValue(usePlanParts(wateredParts))} />
}

const wateredParts = [
  'formula',
  'factor',
  'levels',
  'doughs',
  'steps',
  'temperature',
  'kitchenIds',
] as const

const Water = memo(function Water({ plan }: { plan: Plan }) {
  const kitchen = usePlanPage((page) => page.kitchen)
  const { change } = usePlanActions()
  const unit = useTemperatureUnit()
  const learned = useLearnedWork(plan, kitchen)
  const water = useMemo(() => waterPlan(plan, kitchen, learned), [plan, kitchen, learned])
  const { temperature } = plan
  if (!water.ok && water.reason === 'no-water-at-mix')
    return <UnwateredPanel unwatered={water} levels={plan.levels} />
  if (!temperature || !water.ok || water.batches.length === 0)
    return (
      <Section id="plan-water" title="Water">
        <p className={styles.soft}>{whyNoWater(water.ok ? 'no-batch' : water.reason)}</p>
      </Section>
    )
  const { matched } = temperature
  const [thermometer = null] = thingsOfKind(kitchen, 'thermometer', plan.kitchenIds)
  const sign = degreeSign(unit)
  const tenths = (celsius: number) => degreesText(celsius, unit, 1)
  const rule = water.batches[0]?.simpleRuleCelsius ?? water.oneWaterCelsius
  const columns = water.batches.map(({ levelId }) => ({
    key: levelId ?? 'all',
    head: <BatchHead levels={plan.levels} levelId={levelId} />,
  }))
  const rows = [
    ...waterRows(water, matched, unit),
    ...(matched
      ? []
      : [
          {
            key: 'dough',
            head: 'Dough then',
            cells: water.batches.map((each) => tenths(each.oneWaterDoughCelsius)),
            quiet: true,
          },
        ]),
  ]
  return (
    <Section
      id="plan-water"
      title="Water"
      aside={`for dough of ${tenths(water.wantedDoughCelsius)} ${sign}`}
    >
      <LedgerTable
        caption={`Water temperature, ${sign}`}
        hideCaption
        columns={columns}
        rows={rows}
      />
      <p className={styles.words}>{spreadWords(water, matched, degreeWords(unit), thermometer)}</p>
      <p className={styles.soft}>{warmthWords(water, degreeWords(unit))}</p>
      <p className={styles.soft}>{workSourceText(water.batches.map(({ work }) => work))}</p>
      {matched ? null : (
        <div>
          <Button size="small" onPress={() => change((now) => withMatchedWater(now))}>
            Match the water
          </Button>
        </div>
      )}
      {waterWarnings(water, degreeWords(unit)).map((warning) => (
        <p key={warning} className={styles.warn}>
          {warning}
        </p>
      ))}
      <SideNote label="How this was computed">
        <p>
          A heat balance over flour, water and whatever else goes into the bowl, the bowl, bench and
          air of the room, the wetting heat of the flour that is still dry (by its moisture, where
          the kitchen knows it), and the mixing work. A kitchen thermometer is good to
          {stepsText(0.5, unit, 1)} to {stepsText(1, unit, 1)} {sign}, so smaller differences are
          not worth chasing.
          {rule >= coldestWaterCelsius
            ? ` The simple rule (temperatures added up, friction taken off) would say ${tenths(rule)} ${sign} for all and miss by ${water.batches
                .map((each) => stepsText(each.simpleRuleDoughErrorCelsius, unit, 1))
                .join(', ')} ${sign}.`
            : ''}
        </p>
      </SideNote>
    </Section>
  )
})
