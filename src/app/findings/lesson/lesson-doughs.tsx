import { useMemo } from 'react'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import type { Plan } from '@/core/trial/plan-record.ts'
import { massUnit } from '@/core/units/mass-text.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { writtenSheet } from '@/core/weighing/written-sheet.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { levelText } from '@/core/wording/words/level-text.ts'

/** What went into each dough, as it was planned: weights alone, nothing of what came of them. */
export function LessonDoughs({ whole, plan }: { whole: WholeTrial; plan: Plan }) {
  const sheet = useMemo(() => weighSheet(plan, whole.kitchen), [plan, whole.kitchen])
  const { weights } = writtenSheet(sheet, plan.factor.unitOfMeasure)
  const columns = sheet.batches.map(({ levelId }) => {
    const level = plan.levels.find(({ id }) => id === levelId)
    return {
      key: levelId ?? 'all',
      head: level ? levelText(level, plan.factor.unitOfMeasure) : 'all levels',
    }
  })
  return (
    <LedgerTable
      caption={`Weights of each dough, ${massUnit()}`}
      columns={columns}
      rows={weights.map(({ key, head, cells }) => ({ key, head, cells }))}
    />
  )
}
