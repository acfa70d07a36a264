import type { LevelName } from './score-table.ts'
import { isMissing, numberWithUnit, unitOfAll } from './table-number.ts'

/** The levels of a table in their order, the unit they carry, and each text's place among them (-1: none). */
export interface CsvLevels {
  levels: LevelName[]
  unitOfMeasure: string
  indexOf: (text: string) => number
}

/**
 * Levels that are all numbers, with one unit behind them or none, are measured and rise; otherwise, or where they are called a
 * choice (product codes), they are options in the order of the file.
 */
export function csvLevels(cells: Iterable<string>, choice: boolean): CsvLevels {
  const texts = [...new Set(cells)].filter((text) => !isMissing(text))
  const read = choice ? null : unitOfAll(texts)
  const levels: LevelName[] = read ? [...new Set(read.values)].toSorted((a, b) => a - b) : texts
  const ranks = new Map(levels.map((name, rank) => [name, rank]))
  const places = new Map(
    texts.map((text, at) => [text, ranks.get(read ? (read.values[at] ?? 0) : text) ?? -1]),
  )
  return {
    levels,
    unitOfMeasure: read?.unit ?? '',
    indexOf: (text) => places.get(text) ?? -1,
  }
}

/** Whether a level is the one that is written so: by its number, with its unit or without, or by its name. */
export function isLevel(name: LevelName, written: LevelName): boolean {
  if (`${name}` === `${written}`) return true
  return typeof name === 'number' && numberWithUnit(`${written}`)?.value === name
}
