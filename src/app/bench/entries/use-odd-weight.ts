import { useMemo } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { oddWeight } from '@/core/session/press/odd-weight.ts'
import { type ToWeigh, toWeigh } from '@/core/session/press/to-weigh.ts'
import { weightsOfBatch } from '@/core/session/weights-of-batch.ts'
import { sheetOfBatch } from '@/core/session/worked-levels.ts'
import { withUnit } from '@/core/units/number-text.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { oddWeightText } from '@/core/wording/bench/odd-weight-text.ts'
import type { OddReadingWords } from './odd-reading.tsx'

/** What is to be weighed into one dough, and what is said of a reading (grams) of a line that would hardly be right. */
export function useOddWeight(batchId: string): {
  lines: ToWeigh[]
  oddIn: (line: ToWeigh, grams: number) => OddReadingWords | null
} {
  const { whole, session, plan, events } = useBench()
  const sheet = useMemo(() => weighSheet(plan, whole.kitchen), [plan, whole.kitchen])
  const batch = session.batches.find(({ id }) => id === batchId)
  const lines = toWeigh(sheet, batch?.levelId ?? null, batchId, events)
  const logged = weightsOfBatch(events, batchId)
  const weights = sheetOfBatch(sheet.batches, batch?.levelId ?? null)
  const nameOf = (key: string) => lines.find((each) => each.key === key)?.name ?? ''
  const inUnit = (level: string) => withUnit(level, plan.factor.unitOfMeasure)
  const oddIn = (line: ToWeigh, grams: number) => {
    const found = weights && oddWeight({ plan, batch: weights, logged, key: line.key, grams })
    return found ? oddWeightText(found, line.name, nameOf, inUnit) : null
  }
  return { lines, oddIn }
}
