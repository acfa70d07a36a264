import { useMemo } from 'react'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { degreeWords } from '@/app/kit/field/temperature-words.ts'
import { useLearnedWork } from '@/app/plan/page/learned-context.ts'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import { massName } from '@/core/units/mass-text.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import { asReadLines } from '@/core/wording/weighing/as-read-lines.ts'
import { sheetFindingTexts } from '@/core/wording/weighing/sheet-findings-text.ts'
import { warmthWords, waterWarnings } from '@/core/wording/weighing/water-text.ts'
import { sharedDoseText } from '@/core/wording/weighing/weighing-text.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import { columnsOfPages } from './columns-of-pages.ts'
import { PaperHead } from './paper-head.tsx'
import styles from './printed-weigh-sheet.module.css'
import { WeighSheetTable } from './weigh-sheet-table.tsx'

/** So many doughs have room beside each other on a page held upright, each with its box and its blank. */
const mostDoughs = 5

/** The weigh sheet to work by: a box to tick and a blank for what the scale showed at every weight; more doughs, more pages. */
export function PrintedWeighSheet() {
  const plan = usePlanPage((page) => page.plan)
  const kitchen = usePlanPage((page) => page.kitchen)
  const sheet = useMemo(() => weighSheet(plan, kitchen), [plan, kitchen])
  const unit = useTemperatureUnit()
  const learned = useLearnedWork(plan, kitchen)
  const water = useMemo(() => waterPlan(plan, kitchen, learned), [plan, kitchen, learned])
  const degrees = degreeWords(unit)
  const matched = plan.temperature?.matched === true
  const written = writtenSheet(sheet, plan.factor.unitOfMeasure)
  const asRead = asReadLines(water.ok ? water : null, matched, degrees, sheet.batches.length)
  const shared = sheet.doses.map((dose) => sharedDoseText(dose, plan))
  const said = [
    ...sheetFindingTexts(sheet, plan).filter((text) => !shared.includes(text)),
    ...(water.ok ? [...waterWarnings(water, degrees), warmthWords(water, degrees)] : []),
  ]
  const pages = columnsOfPages(sheet.batches.length, mostDoughs)
  return pages.map((places, at) => (
    <div key={places.join()} className={styles.page}>
      <PaperHead>Weigh sheet{pages.length > 1 ? `, ${at + 1} of ${pages.length}` : ''}</PaperHead>
      <p>
        {asSentenceStart(massName())} of each dough, plan revision {plan.revision}. Tick when it is
        in; write what the scale showed where it differs.
      </p>
      {at > 0
        ? null
        : shared.map((text) => (
            <p key={text}>
              <i className={styles.box} /> {text}
            </p>
          ))}
      <WeighSheetTable {...{ places, written, asRead }} batches={sheet.batches} />
      <p className={styles.foot}>
        <span>Who weighed</span>
        <i className={styles.rest} />
        <span>On which scale</span>
        <i className={styles.rest} />
        <span>Bag and lot</span>
        <i className={styles.rest} />
      </p>
      {at < pages.length - 1 ? null : said.map((text) => <p key={text}>{text}</p>)}
    </div>
  ))
}
