import { memo } from 'react'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import { SideNote } from '@/app/kit/page/side-note.tsx'
import { type Threshold, thresholds } from '@/core/fairness/thresholds.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { fairnessTitles } from '@/core/wording/fairness/fairness-titles.ts'
import { thresholdSourceText } from '@/core/wording/fairness/threshold-sources.ts'

const codes = Object.keys(thresholds) as (keyof typeof thresholds)[]
const columns = [
  { key: 'know', head: 'Know from' },
  { key: 'fix', head: 'Fix from' },
  { key: 'source', head: 'Where from', align: 'text' as const },
]

/** The sizes from which each item is to be known or fixed, all in one table, each with where it comes from. */
export const FairnessThresholds = memo(function FairnessThresholds() {
  return (
    <SideNote label="From which size on">
      <LedgerTable
        caption="Sizes that decide"
        columns={columns}
        rows={codes.map((code) => ({
          key: code,
          head: fairnessTitles[code],
          cells: [
            sizeText(thresholds[code].know, thresholds[code].unit),
            sizeText(thresholds[code].fix, thresholds[code].unit),
            thresholdSourceText(code, thresholds[code].practice),
          ],
        }))}
      />
    </SideNote>
  )
})

function sizeText(size: number | null, unit: Threshold['unit']): string {
  if (size === null) return 'never'
  return unit === 'count' ? plainNumber(size) : `${plainNumber(size)} ${unit}`
}
