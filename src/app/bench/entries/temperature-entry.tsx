import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { PadEntry } from '@/app/bench/pad/pad-entry.tsx'
import { useTemperatureText, useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureEntry } from '@/app/kit/field/temperature-words.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { landing } from '@/app/kit/press/keep-focus.ts'
import { useServices } from '@/app/services/services.ts'
import {
  possibleCelsius,
  type TemperatureOf,
  usualCelsius,
} from '@/core/session/press/usual-readings.ts'
import { isOfKitchen, lastCelsius } from '@/core/session/readings/last-reading.ts'
import { temperatureName } from '@/core/wording/bench/event-text.ts'
import { oddCelsiusText } from '@/core/wording/bench/odd-celsius-text.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { BackPress } from './back-press.tsx'
import type { EntryProps } from './entry-props.ts'
import { SeveralUnits, useSeveral } from './several-units.tsx'

const ofBatch: TemperatureOf[] = [
  'dough',
  'water',
  'flour',
  'preferment',
  'room',
  'fridge',
  'oven-floor',
  'core',
]
const ofPiece: TemperatureOf[] = ['oven-floor', 'core', 'piece', 'serving', 'room', 'fridge']

const endsOf = (of: TemperatureOf) => {
  const { least, most } = possibleCelsius(of)
  return { leastCelsius: least, mostCelsius: most }
}

/**
 * A reading of the thermometer: of one dough or piece, or of several at once. Room, fridge and oven floor are of the kitchen, and
 * logged about the session.
 */
export function TemperatureEntry({ unit, of: asked, onKept }: EntryProps) {
  const { log, session, events } = useBench()
  const { now } = useServices()
  const degrees = useTemperatureText()
  const choices = unit.kind === 'batch' ? ofBatch : ofPiece
  const [of, setOf] = useState<TemperatureOf>(asked ?? choices[0] ?? 'dough')
  const [choosing, setChoosing] = useState(false)
  const several = useSeveral(unit)
  const entry = temperatureEntry(useTemperatureUnit(), endsOf(of))
  const last = lastCelsius(events, of, unit.id)
  const usual = usualCelsius(of)
  const hint = [
    `Usually ${degrees(usual.least)} to ${degrees(usual.most)}.`,
    last ? `Last ${degrees(last.value)} at ${dayTime(last.at, now(), session.zone)}.` : '',
  ]
    .filter(Boolean)
    .join(' ')
  const keep = async (typed: number) => {
    const celsius = entry.celsius(typed)
    const abouts = isOfKitchen(of) ? [{ kind: 'session' as const, id: session.id }] : several.units
    const kept = await log(
      ...abouts.map((about) => ({ kind: 'temperature' as const, about, of, celsius })),
    )
    if (kept) onKept()
    return kept
  }
  return (
    <PadEntry
      label={`${temperatureName(of)} temperature`}
      unit={entry.unit}
      check={entry.check}
      odd={(typed) => oddCelsiusText(of, entry.celsius(typed), degrees)}
      hint={hint}
      draftName={entry.draftKey(`temperature/${of}/${unit.id}`)}
      onKeep={keep}
      signed
      besideField={
        <Button size="bench" onPress={() => setChoosing(!choosing)}>
          {choosing ? 'As it was' : 'Other'}
        </Button>
      }
      beside={<BackPress onPress={onKept} />}
    >
      <h2 className={styles.unseen} {...landing}>
        Temperature
      </h2>
      {choosing ? (
        <fieldset className={styles.pair} aria-label="What was measured">
          {choices.map((each) => (
            <Button
              key={each}
              size="bench"
              pressed={each === of}
              onPress={() => {
                setOf(each)
                setChoosing(false)
              }}
            >
              {temperatureName(each)}
            </Button>
          ))}
        </fieldset>
      ) : isOfKitchen(of) ? (
        <p className={styles.quiet}>Of the kitchen, whatever dough stands beside it.</p>
      ) : (
        <SeveralUnits several={several} />
      )}
    </PadEntry>
  )
}
