import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { Choice } from '@/app/kit/field/choice.tsx'
import { useTemperatureText, useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureEntry } from '@/app/kit/field/temperature-words.ts'
import {
  possibleCelsius,
  type TemperatureOf,
  usualCelsius,
} from '@/core/session/press/usual-readings.ts'
import { temperatureName } from '@/core/wording/bench/event-text.ts'
import { oddCelsiusText } from '@/core/wording/bench/odd-celsius-text.ts'
import { clockTime } from '@/core/wording/words/clock-time.ts'
import type { EntryProps } from './entry-props.ts'
import { NumberEntry } from './number-entry.tsx'

const ofBatch: TemperatureOf[] = ['dough', 'water', 'flour', 'preferment', 'room', 'fridge']
const ofPiece: TemperatureOf[] = ['oven-floor', 'core', 'piece', 'room']

const aboutSession = (of: TemperatureOf) => of === 'room' || of === 'fridge'

const endsOf = (of: TemperatureOf) => {
  const { least, most } = possibleCelsius(of)
  return { leastCelsius: least, mostCelsius: most }
}

/** A reading of the thermometer, and what it was of. Room and fridge are logged about the session, the rest about the dough. */
export function TemperatureEntry({ unit, onKept }: EntryProps) {
  const { log, session, events } = useBench()
  const degrees = useTemperatureText()
  const choices = unit.kind === 'batch' ? ofBatch : ofPiece
  const [of, setOf] = useState<TemperatureOf>(choices[0] ?? 'dough')
  const entry = temperatureEntry(useTemperatureUnit(), endsOf(of))
  const last = events.findLast(
    (event) =>
      event.kind === 'temperature' &&
      event.of === of &&
      (aboutSession(of) || event.about.id === unit.id),
  )
  const usual = usualCelsius(of)
  const hint = [
    `Usually ${degrees(usual.least)} to ${degrees(usual.most)}.`,
    last?.kind === 'temperature'
      ? `Last ${degrees(last.celsius)} at ${clockTime(last.at, session.zone)}.`
      : '',
  ]
    .filter(Boolean)
    .join(' ')
  return (
    <NumberEntry
      label={`${temperatureName(of)} temperature`}
      unit={entry.unit}
      check={entry.check}
      odd={(typed) => oddCelsiusText(of, entry.celsius(typed), degrees)}
      hint={hint}
      draftName={entry.draftKey(`temperature/${unit.id}`)}
      onKeep={async (typed) => {
        const about = aboutSession(of) ? { kind: 'session' as const, id: session.id } : unit
        const kept = await log({ kind: 'temperature', about, of, celsius: entry.celsius(typed) })
        if (kept) onKept()
        return kept
      }}
    >
      <Choice
        label="What was measured"
        value={of}
        options={choices.map((each) => ({ value: each, label: temperatureName(each) }))}
        onValue={setOf}
        size="bench"
        row
      />
    </NumberEntry>
  )
}
