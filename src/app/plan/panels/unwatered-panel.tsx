import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { degreeSign, degreesText, degreeWords } from '@/app/kit/field/temperature-words.ts'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import type { UnwateredDoughs } from '@/core/dough-temperature/unwatered-doughs.ts'
import { coldestWaterCelsius } from '@/core/dough-temperature/water-plan.ts'
import type { Level } from '@/core/trial/level.ts'
import { unwateredWords } from '@/core/wording/weighing/water-text.ts'
import { BatchHead } from './batch-head.tsx'
import styles from './panel.module.css'

interface Props {
  unwatered: UnwateredDoughs
  levels: readonly Level[]
}

/** How warm the doughs come out where some or all of them take no water at the mix, and water where there is some. */
export function UnwateredPanel({ unwatered, levels }: Props) {
  const unit = useTemperatureUnit()
  const { doughs, wantedDoughCelsius } = unwatered
  const sign = degreeSign(unit)
  const written = (celsius: number | null) =>
    celsius === null || celsius < coldestWaterCelsius ? '–' : degreesText(celsius, unit, 1)
  const water = doughs.map(({ waterCelsius }) => written(waterCelsius))
  const dough = doughs.map(({ doughCelsius }) => degreesText(doughCelsius, unit, 1))
  return (
    <Section
      id="plan-water"
      title="Water"
      aside={`for dough of ${degreesText(wantedDoughCelsius, unit, 1)} ${sign}`}
    >
      <LedgerTable
        caption={`Water and dough temperature, ${sign}`}
        hideCaption
        columns={doughs.map(({ levelId }) => ({
          key: levelId ?? 'all',
          head: <BatchHead levels={levels} levelId={levelId} />,
        }))}
        rows={[
          ...(water.every((text) => text === '–')
            ? []
            : [{ key: 'water', head: 'Water', cells: water }]),
          { key: 'dough', head: 'Dough', cells: dough },
        ]}
      />
      <p className={styles.words}>{unwateredWords(unwatered, degreeWords(unit))}</p>
    </Section>
  )
}
