import type { FairnessCode, FairnessData } from '@/core/fairness/fairness-data.ts'
import type { ItemOf, LevelAmount } from '@/core/fairness/fairness-item.ts'
import type { Remedy } from '@/core/fairness/remedy.ts'
import { severityOf } from '@/core/fairness/severity-of.ts'
import { thresholds } from '@/core/fairness/thresholds.ts'

interface Found<Code extends FairnessCode> {
  /** In the unit of the thresholds. */
  size: number
  data: FairnessData[Code]
  remedies?: Remedy[]
  path: string
  perLevel?: LevelAmount[]
  /** What it is about, where a code can stand several times. */
  subject?: string
  when?: 'before' | 'after'
  /** False where the size is a yes or no that no sentence names. */
  counts?: boolean
}

/** An item with the severity that the thresholds give its size. A fine item needs no remedy and has none. */
export function madeItem<Code extends FairnessCode>(code: Code, found: Found<Code>): ItemOf<Code> {
  const { size, data, path, subject } = found
  const severity = severityOf(code, size)
  const key = subject === undefined ? code : `${code}/${subject}`
  return {
    code,
    key: key.slice(0, 64),
    when: found.when ?? 'before',
    severity,
    accepted: false,
    amount: found.counts === false ? null : { value: size, unit: thresholds[code].unit },
    perLevel: found.perLevel ?? null,
    data,
    remedies: severity === 'fine' ? [] : (found.remedies ?? []),
    path,
  }
}
