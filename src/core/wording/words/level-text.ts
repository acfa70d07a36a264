import { decimalsOf, decimalText, plainNumber, withUnit } from '@/core/units/number-text.ts'

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

/** A level's name in words: a number with the factor's unit, an option by its label. */
export function levelNameText({ name }: { name: number | string }, unitOfMeasure: string): string {
  return typeof name === 'string' ? name : withUnit(plainNumber(name), unitOfMeasure)
}

/** A worked-out place on the factor's axis, such as the best: one decimal more than the levels were typed with. */
export function placeText(value: number, levels: readonly (number | string)[]): string {
  const typed = levels.map((level) => (typeof level === 'number' ? decimalsOf(level) : 0))
  return decimalText(value, Math.min(6, Math.max(0, ...typed) + 1))
}
