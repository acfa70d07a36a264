import { memo, useDeferredValue, useMemo } from 'react'
import { Section } from '@/app/kit/page/section.tsx'
import type { PlanPage } from '@/app/plan/page/plan-page.ts'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { weighedParts } from '@/app/plan/page/read-parts.ts'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { WeighLedger } from '@/app/plan/sheet/weigh-ledger.tsx'
import { levelRiders } from '@/core/trial/level-riders.ts'
import { massName } from '@/core/units/mass-text.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import { scalesApartText } from '@/core/wording/weighing/scales-apart-text.ts'
import { sheetTroubleTexts } from '@/core/wording/weighing/weigh-trouble-text.ts'
import { BatchHead } from './batch-head.tsx'
import { DoseAdviceList } from './dose-advice-list.tsx'
import styles from './panel.module.css'
import { inColumns, riderRows, sheetColumns } from './weigh-sheet-rows.ts'

/**
 * The weigh sheet of one session, live: every batch's weights on the plan's scales, and what they come to. What was typed is
 * painted first, its weights in the frame after.
 */
export function WeighSheetPanel() {
  const plan = useDeferredValue(usePlanParts(weighedParts))
  const kitchen = usePlanPage((page) => page.kitchen)
  const calmLevels = useDeferredValue(usePlanPage((page) => page.calmLevels))
  return <Weighed plan={plan} kitchen={kitchen} calmLevels={calmLevels} />
}

type WeighedProps = Pick<PlanPage, 'plan' | 'kitchen' | 'calmLevels'>

const Weighed = memo(function Weighed({ plan, kitchen, calmLevels }: WeighedProps) {
  const sheet = useMemo(() => weighSheet(plan, kitchen), [plan, kitchen])
  const riders = useMemo(() => levelRiders(plan), [plan])
  const levelIds = useMemo(() => sheetColumns(sheet, plan.levels), [sheet, plan.levels])
  const columns = useMemo(
    () =>
      levelIds.map((levelId) => ({
        key: levelId ?? 'all',
        head: <BatchHead levels={calmLevels} levelId={levelId} />,
      })),
    [levelIds, calmLevels],
  )
  if (sheet.batches.length === 0)
    return (
      <Section id="plan-weigh-sheet" title="Formula and weigh sheet">
        <p>The weights of every batch stand here as soon as there is a level and a flour.</p>
      </Section>
    )
  const { weights, comesTo } = writtenSheet(sheet, plan.factor.unitOfMeasure)
  const rows = [
    ...weights,
    ...comesTo,
    ...(riders.length === sheet.batches.length ? riderRows(riders) : []),
  ]
  const apart = scalesApartText(sheet, plan)
  const blurred = sheet.neighbours.some((pair) => pair.apart !== 'kept-apart')
  return (
    <Section
      id="plan-weigh-sheet"
      title="Formula and weigh sheet"
      aside={`${massName()} for one session`}
    >
      <WeighLedger
        sheet={sheet}
        plan={plan}
        columns={columns}
        rows={inColumns(rows, sheet, levelIds)}
      />
      {apart === '' ? null : <p className={blurred ? styles.warn : styles.words}>{apart}</p>}
      {sheetTroubleTexts(sheet, plan).map((text) => (
        <p key={text} className={styles.warn}>
          {text}
        </p>
      ))}
      <DoseAdviceList sheet={sheet} />
    </Section>
  )
})
