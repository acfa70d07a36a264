import { plainNumber, withUnit } from './number-text.ts'

export interface NamedLevel {
  value: number | null
  label: string
}

/** A level in running text: its number with the factor's unit ("74 %"), an option of a choice by its name. */
export function levelText(level: NamedLevel, unitOfMeasure: string): string {
  return level.value === null ? level.label : withUnit(plainNumber(level.value), unitOfMeasure)
}

/** A level without its unit: tabs, table heads and axis. */
export function levelShort(level: NamedLevel): string {
  return level.value === null ? level.label : plainNumber(level.value)
}
