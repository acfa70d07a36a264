import { amountCheck, celsiusCheck } from '@/app/bench/entries/amount-checks.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'

interface CorrectableNumber {
  value: number
  label: string
  unit: string
  check: (value: number) => string | undefined
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
      return { number: numberPart(event.grams, 'Mass', 'g', amountCheck.grams) }
    case 'temperature':
      return { number: numberPart(event.celsius, 'Temperature', '°C', celsiusCheck(event.of)) }
    case 'rise':
      return { number: numberPart(event.percent, 'Risen by', '%', amountCheck.rise) }
    case 'size':
      return {
        number: numberPart(
          event.value,
          event.what === 'volume' ? 'Volume' : 'Height',
          event.what === 'volume' ? 'mL' : 'mm',
          amountCheck.size,
        ),
      }
    case 'measured':
      return { number: numberPart(event.value, 'Value', '', amountCheck.any) }
    case 'note':
      return { text: event.text }
    case 'failure':
      return { text: event.note ?? '' }
    default:
      return {}
  }
}

function numberPart(
  value: number,
  label: string,
  unit: string,
  check: CorrectableNumber['check'],
): CorrectableNumber {
  return { value, label, unit, check }
}

/** The entry that replaces `event`: the same thing said rightly, citing what it corrects. */
export function corrected(
  event: Event,
  mend: { value: number | null; text: string; minutesEarlier: number },
): BenchEntry {
  const { id, trialId, sessionId, device, count, zone, ...said } = event
  const entry = { ...said, at: event.at - mend.minutesEarlier * 60_000, corrects: id }
  if ('grams' in entry && mend.value !== null) return { ...entry, grams: mend.value }
  if (entry.kind === 'temperature' && mend.value !== null) return { ...entry, celsius: mend.value }
  if (entry.kind === 'rise' && mend.value !== null) return { ...entry, percent: mend.value }
  if ((entry.kind === 'size' || entry.kind === 'measured') && mend.value !== null)
    return { ...entry, value: mend.value }
  if (entry.kind === 'note') return { ...entry, text: mend.text }
  if (entry.kind === 'failure' && mend.text !== '') return { ...entry, note: mend.text }
  return entry
}
