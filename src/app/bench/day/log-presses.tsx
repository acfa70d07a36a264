import { useBench } from '@/app/bench/bench-context.ts'
import look from '@/app/bench/day/now.module.css'
import type { BenchUnit } from '@/app/bench/entries/entry-props.ts'
import { useEntryKeys } from '@/app/bench/entries/use-entry-keys.ts'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import { type EntryKind, entryNames } from '@/core/session/press/entry-kinds.ts'
import type { TemperatureOf } from '@/core/session/press/usual-readings.ts'
import { type AskedReading, askedReadings } from '@/core/session/readings/asked-reading.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { askedReadingText } from '@/core/wording/bench/asked-reading-text.ts'

/** What a press of the log opens: an entry, and of which thermometer reading or photo where the moment asks for one. */
export interface Entering {
  kind: EntryKind | 'more'
  unit: BenchUnit
  of?: TemperatureOf
  caption?: string
}

export interface LogPressesProps {
  item: AgendaItem | null
  unit: BenchUnit
  runs: readonly StepRun[]
  onEnter: (entering: Entering) => void
}

/** The likeliest entry, what the moment asks for first, and the way to the rest; on a desk three of them. */
export function LogPresses({ item, unit, runs, onEnter }: LogPressesProps) {
  const { events, plan } = useBench()
  const { now } = useServices()
  const keys = useEntryKeys(item, unit)
  const line = runs.filter(({ unit: of }) => of.id === item?.unit.id)
  const at = line.findIndex(
    ({ step, repeat }) => step.id === item?.step.id && repeat === item.repeat,
  )
  const next = line[at + 1]?.step ?? plan.steps[stepAt(plan.steps, item) + 1] ?? null
  const asked = item ? askedReadings({ item, run: line[at], next, events, now: now() }) : []
  const weighFirst = keys[0] === 'weigh'
  const taken = new Set(asked.map(({ what }) => entryOf(what)))
  const presses = [
    ...(weighFirst
      ? [{ key: 'weigh', words: entryNames.weigh, enter: { kind: 'weigh' as const } }]
      : []),
    ...asked.map((reading) => ({
      key: askedReadingText(reading),
      words: askedReadingText(reading),
      enter: enteringOf(reading),
    })),
    ...keys
      .filter((kind) => kind !== 'weigh' && !taken.has(kind))
      .map((kind) => ({ key: kind, words: entryNames[kind], enter: { kind } })),
  ].slice(0, 3)
  return (
    <div className={look.presses}>
      {presses.map(({ key, words, enter }) => (
        <Button key={key} size="bench" onPress={() => onEnter({ ...enter, unit })}>
          {words}
        </Button>
      ))}
      <Button size="bench" onPress={() => onEnter({ kind: 'more', unit })}>
        More to log
      </Button>
    </div>
  )
}

const stepAt = (steps: readonly { id: string }[], item: AgendaItem | null) =>
  item ? steps.findIndex(({ id }) => id === item.step.id) : -2

const entryOf = (what: AskedReading['what']): EntryKind => what

function enteringOf(reading: AskedReading): Omit<Entering, 'unit'> {
  if (reading.what === 'temperature') return { kind: 'temperature', of: reading.of }
  if (reading.what === 'photo') return { kind: 'photo', caption: askedReadingText(reading) }
  return { kind: reading.what }
}
