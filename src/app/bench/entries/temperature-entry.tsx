import { useState } from 'react'
import { useBench } from '@/app/bench/bench-context.ts'
import { Choice } from '@/app/kit/field/choice.tsx'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureEntry } from '@/app/kit/field/temperature-words.ts'
import type { EventOf } from '@/core/session/event-record.ts'
import { temperatureName } from '@/core/wording/bench/event-text.ts'
import { loggedEnds } from './amount-checks.ts'
import type { EntryProps } from './entry-panel.tsx'
import { NumberEntry } from './number-entry.tsx'

type TemperatureOf = EventOf<'temperature'>['of']

const ofBatch: TemperatureOf[] = ['dough', 'water', 'flour', 'preferment', 'room', 'fridge']
const ofPiece: TemperatureOf[] = ['oven-floor', 'core', 'piece', 'room']

/** A reading of the thermometer, and what it was of. Room and fridge are logged about the session, the rest about the dough. */
export function TemperatureEntry({ unit, onKept }: EntryProps) {
  const { log, session } = useBench()
  const choices = unit.kind === 'batch' ? ofBatch : ofPiece
  const [of, setOf] = useState<TemperatureOf>(choices[0] ?? 'dough')
  const entry = temperatureEntry(useTemperatureUnit(), loggedEnds(of))
  const aboutSession = of === 'room' || of === 'fridge'
  return (
    <NumberEntry
      label={`${temperatureName(of)} temperature`}
      unit={entry.unit}
      check={entry.check}
      draftName={entry.draftKey(`temperature/${unit.id}`)}
      onKeep={async (typed) => {
        const about = aboutSession ? { kind: 'session' as const, id: session.id } : unit
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
