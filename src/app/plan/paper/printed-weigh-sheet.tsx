import { useMemo } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { degreeSign, degreeWords } from '@/app/kit/field/temperature-words.ts'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { useLearnedWork } from '@/app/plan/page/learned-context.ts'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { BatchHead } from '@/app/plan/panels/batch-head.tsx'
import { waterRows } from '@/app/plan/panels/water-rows.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import { sheetFindingTexts } from '@/core/wording/weighing/sheet-findings-text.ts'
import { warmthWords, waterWarnings } from '@/core/wording/weighing/water-text.ts'

/** The weigh sheet as a page of its own. */
export function PrintedWeighSheet() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const sheet = useMemo(() => weighSheet(plan, kitchen), [plan, kitchen])
  const { weights, comesTo } = writtenSheet(sheet, plan.factor.unitOfMeasure)
  const unit = useTemperatureUnit()
  const learned = useLearnedWork(plan, kitchen)
  const water = useMemo(() => waterPlan(plan, kitchen, learned), [plan, kitchen, learned])
  const columns = sheet.batches.map(({ levelId }) => ({
    key: levelId ?? 'all',
    head: <BatchHead levels={plan.levels} levelId={levelId} />,
  }))
  const matched = plan.temperature?.matched === true
  const wateredRows = water.ok
    ? waterRows(water, matched, unit, `Water at, ${degreeSign(unit)}`)
    : []
  const warnings = water.ok
    ? [...waterWarnings(water, degreeWords(unit)), warmthWords(water, degreeWords(unit))]
    : []
  return (
    <>
      <h1>Weigh sheet</h1>
      <p>
        {plan.question} {plan.factor.name}, plan revision {plan.revision}
      </p>
      <LedgerTable
        caption="Grams for one session"
        columns={columns}
        rows={[...weights, ...wateredRows, ...comesTo]}
      />
      {[...sheetFindingTexts(sheet, plan), ...warnings].map((text) => (
        <p key={text}>{text}</p>
      ))}
    </>
  )
}
