import { useBench } from '@/app/bench/bench-context.ts'
import { useBenchSheet } from '@/app/bench/cups/use-bench-sheet.ts'
import { oddWeight } from '@/core/session/press/odd-weight.ts'
import { type ToWeigh, toWeigh } from '@/core/session/press/to-weigh.ts'
import { weightsOfBatch } from '@/core/session/weights-of-batch.ts'
import { sheetOfBatch } from '@/core/session/worked-levels.ts'
import { withUnit } from '@/core/units/number-text.ts'
import { oddWeightText } from '@/core/wording/bench/odd-weight-text.ts'
import type { OddReadingWords } from './odd-reading.tsx'

/** What is to be weighed into one dough, and what is said of a reading (grams) of a line that would hardly be right. */
export function useOddWeight(batchId: string): {
  lines: ToWeigh[]
  oddIn: (line: ToWeigh, grams: number) => OddReadingWords | null
} {
  const { session, plan, events, unknown } = useBench()
  const sheet = useBenchSheet()
  const batch = session.batches.find(({ id }) => id === batchId)
  const lines = toWeigh(sheet, batch?.levelId ?? null, batchId, events)
  const logged = weightsOfBatch(events, batchId)
  const weights = sheetOfBatch(sheet.batches, batch?.levelId ?? null)
  const nameOf = (key: string) => lines.find((each) => each.key === key)?.name ?? ''
  const inUnit = (level: string) => withUnit(level, plan.factor.unitOfMeasure)
  const oddIn = (line: ToWeigh, grams: number) => {
    // What would be odd of a level cannot be said where nobody knows it.
    const found =
      !unknown && weights && oddWeight({ plan, batch: weights, logged, key: line.key, grams })
    return found ? oddWeightText(found, line.name, nameOf, inUnit) : null
  }
  return { lines, oddIn }
}
