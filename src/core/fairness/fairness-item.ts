import type { FairnessCode, FairnessData } from './fairness-data.ts'
import type { Remedy } from './remedy.ts'

export type Severity = 'fix' | 'know' | 'fine'

const fairnessUnits = [
  '°C',
  '%',
  'g',
  'min',
  'points',
  'level',
  'share',
  'correlation',
  'count',
  'times the margin',
] as const
/** `level` is the factor's own unit; `correlation` runs from 0 to 1; `share` is a part of 1. */
export type FairnessUnit = (typeof fairnessUnits)[number]

export interface LevelAmount {
  levelId: string
  value: number
}

/** One thing that makes the comparison less fair than it looks, or that was checked and is fine. */
export interface ItemOf<Code extends FairnessCode> {
  code: Code
  /** The code, with what it is about where it can stand several times; this goes into the plan's `accepted`. */
  key: string
  when: 'before' | 'after'
  severity: Severity
  /** The baker has seen it and goes on: what was to be fixed is then to be known. */
  accepted: boolean
  amount: { value: number; unit: FairnessUnit } | null
  perLevel: LevelAmount[] | null
  data: FairnessData[Code]
  remedies: Remedy[]
  /** JSON Pointer to the field of the plan it is about; empty for the log. */
  path: string
}

export type FairnessItem = { [Code in FairnessCode]: ItemOf<Code> }[FairnessCode]
