import { memo, useDeferredValue, useMemo } from 'react'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import { usePlanParts } from '@/app/plan/page/use-plan-parts.ts'
import { type AmountRow, formulaViews } from '@/core/formula/formula-views.ts'
import { hydrationPercent, waterFromEverythingPercent } from '@/core/formula/hydration.ts'
import type { Factor } from '@/core/trial/factor.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { referenceLevel } from '@/core/trial/reference-level.ts'
import { massUnit, roundedMass, weightFigure } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

const columns = () => [
  { key: 'grams', head: '', unit: massUnit() },
  { key: 'percent', head: '', unit: '%' },
]

/** The three views of the formula at the control (or the middle level): overall, what ferments ahead, the final dough. */
export function FormulaViewsTables() {
  return <Views plan={useDeferredValue(usePlanParts(viewedParts))} />
}

const viewedParts = ['formula', 'factor', 'levels'] as const

const Views = memo(function Views({ plan }: { plan: Plan }) {
  const { formula, factor, levels } = plan
  const shown = useMemo(() => {
    const level = referenceLevel(levels)
    const at = level ? formulaAtLevel({ formula, factor, levels }, level) : null
    return { level, formula: at?.ok ? at.formula : formula }
  }, [formula, factor, levels])
  const views = useMemo(() => formulaViews(shown.formula), [shown])
  const water = hydrationPercent(shown.formula)
  const everything = waterFromEverythingPercent(shown.formula)
  if (views.flourGrams <= 0) return null
  const where = shown.level ? ` ${whereText(shown.level, factor)}` : ''
  return (
    <>
      <p>
        Hydration {percentText(water)}
        {everything !== null && water !== null && Math.abs(everything - water) > 0.05
          ? `, water from everything ${percentText(everything)}`
          : ''}
        {where}.
      </p>
      <SideNote label="Three views of the formula">
        <LedgerTable
          caption={`Overall${where}`}
          columns={columns()}
          rows={[...views.overall.map(rowOf), total(views.doughGrams)]}
        />
        {views.preferments.map((view) => (
          <LedgerTable
            key={view.prefermentId}
            caption={view.name}
            columns={columns()}
            rows={[...view.rows.map(rowOf), total(view.totalGrams)]}
          />
        ))}
        {views.preferments.length > 0 ? (
          <LedgerTable
            caption="Final dough"
            columns={columns()}
            rows={[
              ...views.finalDough.preferments.map(({ prefermentId, name, grams, percent }) =>
                line(prefermentId, name, grams, percent),
              ),
              ...views.finalDough.rows.map(rowOf),
              total(views.finalDough.totalGrams),
            ]}
          />
        ) : null}
      </SideNote>
    </>
  )
})

const percentText = (value: number | null) => (value === null ? '' : `${decimalText(value, 1)} %`)

const line = (key: string, head: string, grams: number, percent: number | null) => ({
  key,
  head,
  cells: [weightFigure(grams), percent === null ? '' : decimalText(percent, 2)],
})

const rowOf = (row: AmountRow) => line(row.ingredientId, row.name, row.grams, row.percent)

const total = (grams: number) => ({
  key: 'total',
  head: 'Together',
  cells: [roundedMass(grams, 1), ''],
  quiet: true,
})

/** Which level the views are of; a factor other than the water is named with it. */
function whereText(level: Level, { acts, name, unitOfMeasure }: Factor): string {
  const text = levelText(level, unitOfMeasure)
  return acts.on === 'hydration' || acts.on === 'choice' ? `at ${text}` : `with ${name} at ${text}`
}
