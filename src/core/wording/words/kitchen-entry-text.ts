import { plainNumber } from '@/core/units/number-text.ts'

/** A field of a kitchen entry, as its sentences need it. */
interface NamedField {
  label: string
  least?: number
  most?: number
  unit?: string
  /** What it measures, where a number past the ends is likely meant in another unit. */
  measures?: string
}

export const entryMissingText = ({ label }: NamedField) => `Fill in: ${label.toLowerCase()}.`

export const entryNotWholeText = 'A whole number, such as 4.'

/** Between which ends a field's number lies, and what to do: "Coldest: give a number from 0 to 60 °C." */
export function entryEndsText({ label, least, most, unit, measures }: NamedField): string {
  const sign = unit ? ` ${unit}` : ''
  const ends = [
    least === undefined ? '' : ` from ${plainNumber(least)}`,
    most === undefined ? '' : `${least === undefined ? ' up' : ''} to ${plainNumber(most)}`,
  ].join('')
  const check = measures && unit !== 'g' ? ` Check that it is meant in ${unit}.` : ''
  return `${label}: give a number${ends}${sign}.${check}`
}

/** What only shows between two fields of an entry, or between this entry and another. */
export type EntriesClash =
  | 'holds-less-than-its-step'
  | 'most-dough-below-least'
  | 'warmest-below-coldest'
  | 'initials-taken'

export const entriesClashTexts: Readonly<Record<EntriesClash, string>> = {
  'holds-less-than-its-step': 'It must weigh more than its smallest step.',
  'most-dough-below-least': 'The most must be more than the least.',
  'warmest-below-coldest': 'The warmest must be above the coldest.',
  'initials-taken': 'These initials are taken. Add a letter or a number.',
}
