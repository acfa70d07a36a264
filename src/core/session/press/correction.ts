import type { Event } from '@/core/session/event-record.ts'
import type { BenchEntry } from './new-event.ts'
import {
  type Ends,
  possibleCelsius,
  possibleFolds,
  possibleGrams,
  possibleRise,
  possibleSize,
  possibleViewCentimetres,
  viewMillimetres,
} from './usual-readings.ts'

interface CorrectableNumber {
  /** Null where it was not said, and need not be. */
  value: number | null
  label: string
  unit: string
  /** Between which it can be; null where nothing is known of it. */
  ends: Ends | null
  /** It may be left empty: not known. */
  mayLack?: true
}

export interface Correctable {
  number?: CorrectableNumber
  text?: string
}

/** Which part of an entry a person can mend besides its time: one number, or its words. */
export function correctable(event: Event): Correctable {
  switch (event.kind) {
    case 'weighed':
    case 'worked-in':
    case 'mass':
      return { number: { value: event.grams, label: 'Mass', unit: 'g', ends: possibleGrams } }
    case 'temperature': {
      const ends = possibleCelsius(event.of)
      return { number: { value: event.celsius, label: 'Temperature', unit: '°C', ends } }
    }
    case 'folded':
      return { number: { value: event.folds, label: 'Folds', unit: '', ends: possibleFolds } }
    case 'rise':
      return { number: { value: event.percent, label: 'Risen by', unit: '%', ends: possibleRise } }
    case 'size': {
      const volume = event.what === 'volume'
      const as = volume ? { label: 'Volume', unit: 'mL' } : { label: 'Height', unit: 'mm' }
      return { number: { value: event.value, ...as, ends: possibleSize } }
    }
    case 'measured':
      return { number: { value: event.value, label: 'Value', unit: '', ends: null } }
    case 'photo': {
      const value = event.widthMillimetres === undefined ? null : event.widthMillimetres / 10
      const as = { label: 'Width of what it shows', unit: 'cm', ends: possibleViewCentimetres }
      return { number: { value, ...as, mayLack: true }, text: event.caption ?? '' }
    }
    case 'note':
      return { text: event.text }
    case 'failure':
      return { text: event.note ?? '' }
    default:
      return {}
  }
}

/** The entry that replaces `event`: the same thing said rightly, of the moment it happened (UTC ms), citing what it corrects. */
export function corrected(
  event: Event,
  mend: { value: number | null; text: string; at: number },
): BenchEntry {
  const { id, trialId, sessionId, device, count, zone, ...said } = event
  const entry = { ...said, at: mend.at, corrects: id }
  if ('grams' in entry && mend.value !== null) return { ...entry, grams: mend.value }
  if (entry.kind === 'temperature' && mend.value !== null) return { ...entry, celsius: mend.value }
  if (entry.kind === 'folded' && mend.value !== null)
    return { ...entry, folds: Math.round(mend.value) }
  if (entry.kind === 'rise' && mend.value !== null) return { ...entry, percent: mend.value }
  if ((entry.kind === 'size' || entry.kind === 'measured') && mend.value !== null)
    return { ...entry, value: mend.value }
  if (entry.kind === 'photo') {
    const { caption: _, widthMillimetres: __, ...photo } = entry
    return {
      ...photo,
      ...(mend.text.trim() === '' ? {} : { caption: mend.text.trim() }),
      ...(mend.value === null ? {} : { widthMillimetres: viewMillimetres(mend.value) }),
    }
  }
  if (entry.kind === 'note') return { ...entry, text: mend.text }
  if (entry.kind === 'failure' && mend.text !== '') return { ...entry, note: mend.text }
  return entry
}
