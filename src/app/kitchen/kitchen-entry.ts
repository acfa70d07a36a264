import { type KitchenThing, kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import { plainManner } from '@/core/units/manner.ts'
import { withOwnMark } from '@/core/units/number-text.ts'
import { typedNumber } from '@/core/units/typed-number.ts'
import {
  type EntriesClash,
  entriesClashTexts,
  entryEndsText,
  entryMissingText,
  entryNotWholeText,
} from '@/core/wording/words/kitchen-entry-text.ts'
import { typedNumberText } from '@/core/wording/words/typed-number-text.ts'
import { type EntryUnits, fieldIn, keptOf, shownOf } from './fields-in-units.ts'
import type { KitchenChapter, KitchenField } from './kitchen-fields.ts'

export type Typed = Readonly<Partial<Record<string, string>>>

export type KitchenEntry =
  | { ok: true; thing: KitchenThing }
  | { ok: false; problems: Record<string, string> }

/** What is wrong with one field's text, and the mend; nothing when it can stand. */
export function fieldProblem(field: KitchenField, text: string): string | undefined {
  const empty = text.trim() === ''
  if (empty) return field.required ? entryMissingText(field) : undefined
  if (field.type !== 'number') return undefined
  const read = typedNumber(text, field.unit)
  if (!read.ok) return typedNumberText(text, read)
  const { value } = read
  if (value === null) return undefined
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = field
  if (value < least || value > most) return entryEndsText(field)
  if (field.whole && !Number.isInteger(value)) return entryNotWholeText
  return undefined
}

/** The kitchen record that the typed fields make, typed in `units`, or what keeps them from making one, field by field. */
export function kitchenEntry(
  chapter: KitchenChapter,
  id: string,
  typed: Typed,
  others: readonly KitchenThing[],
  units: EntryUnits = plainManner,
): KitchenEntry {
  const problems: Record<string, string> = {}
  const record: Record<string, string | number> = { id, kind: chapter.kind }
  for (const asked of chapter.fields) {
    const field = fieldIn(asked, units)
    const text = (typed[field.key] ?? '').trim()
    const problem = fieldProblem(field, text)
    if (problem) problems[field.key] = problem
    else if (field.type === 'text') record[field.key] = text
    else if (field.type === 'choice') {
      if (text !== '') record[field.key] = text
    } else {
      const read = typedNumber(text, field.unit)
      if (read.ok && read.value !== null) record[field.key] = keptOf(asked, read.value, units)
    }
  }
  const note = (typed.note ?? '').trim()
  if (note) record.note = note
  for (const [key, problem] of Object.entries(crossProblems(record, others)))
    problems[key] ??= problem
  if (Object.keys(problems).length > 0) return { ok: false, problems }
  return { ok: true, thing: kitchenThingShape.parse(record) }
}

/** What only shows between two fields, or between this entry and another. */
function crossProblems(
  record: Record<string, string | number>,
  others: readonly KitchenThing[],
): Record<string, string> {
  const problems: Record<string, string> = {}
  const above = (low: string, high: string, clash: EntriesClash) => {
    const [least, most] = [record[low], record[high]]
    if (typeof least === 'number' && typeof most === 'number' && most <= least)
      problems[high] = entriesClashTexts[clash]
  }
  above('resolutionGrams', 'capacityGrams', 'holds-less-than-its-step')
  above('leastDoughGrams', 'mostDoughGrams', 'most-dough-below-least')
  above('coldestCelsius', 'warmestCelsius', 'warmest-below-coldest')
  const { initials } = record
  const taken = others.some(
    (other) =>
      other.kind === 'taster' &&
      other.id !== record.id &&
      other.initials.toLowerCase() === String(initials).toLowerCase(),
  )
  if (record.kind === 'taster' && taken) problems.initials = entriesClashTexts['initials-taken']
  return problems
}

/** An entry's fields as they would be typed in these units, to change it. */
export function typedFrom(
  chapter: KitchenChapter,
  thing: KitchenThing,
  units: EntryUnits = plainManner,
): Record<string, string> {
  return Object.fromEntries(
    Object.entries(thing)
      .filter(([key]) => key !== 'id' && key !== 'kind')
      .map(([key, value]) => {
        const field = chapter.fields.find((one) => one.key === key)
        return [
          key,
          typeof value === 'number'
            ? withOwnMark(String(field ? shownOf(field, value, units) : value))
            : String(value),
        ]
      }),
  )
}
