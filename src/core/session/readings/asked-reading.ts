import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { TemperatureOf } from '@/core/session/press/usual-readings.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import type { Step } from '@/core/trial/step.ts'

/** What the moment asks for: a reading of the thermometer, the rise in the tub, folds, a photo. */
export type AskedReading =
  | { what: 'temperature'; of: TemperatureOf }
  | { what: 'rise' }
  | { what: 'folds' }
  | { what: 'photo'; of: 'tubs' | 'crumb' }

/** A reading older than this no longer tells how hot the floor is at a launch. Common practice: a floor moves within minutes. */
const freshSeconds = 180

interface Front {
  item: Pick<AgendaItem, 'unit' | 'step' | 'repeat' | 'do' | 'handsOn'>
  run: StepRun | undefined
  /** The step that follows on the same line; null at its end. */
  next: Step | null
  events: readonly Standing[]
  now: number
}

/**
 * The readings that arise now for the dough or piece in front and were not taken yet, the most fleeting first: the floor before a
 * launch, the core as a bake ends, the dough after its mix, the folds of a fold, the rise of a rest, all tubs before they are
 * divided, the crumb at the cut, the warmth as it is served.
 */
export function askedReadings({ item, run, next, events, now }: Front): AskedReading[] {
  const { unit, step, do: what, handsOn } = item
  const ending = what === 'end'
  const since = run?.startedAt ?? null
  const took = (of: TemperatureOf, from: number | null, aboutId: string | null = unit.id) =>
    events.some(
      (event) =>
        event.kind === 'temperature' &&
        event.of === of &&
        (aboutId === null || event.about.id === aboutId) &&
        (from === null || event.at >= from),
    )
  const asked: [boolean, AskedReading][] = [
    [
      step.kind === 'bake' && !ending && !took('oven-floor', now - freshSeconds * 1000, null),
      { what: 'temperature', of: 'oven-floor' },
    ],
    [
      step.kind === 'bake' && ending && since !== null && !took('core', since),
      { what: 'temperature', of: 'core' },
    ],
    [step.kind === 'mix' && ending && !took('dough', since), { what: 'temperature', of: 'dough' }],
    [step.kind === 'fold' && ending && !folded(events, item), { what: 'folds' }],
    [isRise(step) && ending && !handsOn && !rose(events, unit.id, since), { what: 'rise' }],
    [
      next?.kind === 'divide' && ending && !handsOn && !photographed(events, since),
      { what: 'photo', of: 'tubs' },
    ],
    [
      step.kind === 'cut' && ending && !took('serving', since),
      { what: 'temperature', of: 'serving' },
    ],
    [step.kind === 'cut' && ending && !photographed(events, since), { what: 'photo', of: 'crumb' }],
  ]
  return asked.flatMap(([fits, reading]) => (fits ? [reading] : []))
}

const isRise = ({ kind, waitSeconds }: Step) =>
  (kind === 'rest' || kind === 'proof' || kind === 'cold-proof' || kind === 'feed') &&
  waitSeconds > 0

const folded = (events: readonly Standing[], { unit, step, repeat }: Front['item']) =>
  events.some(
    (event) =>
      event.kind === 'folded' &&
      event.about.id === unit.id &&
      event.stepId === step.id &&
      event.repeat === repeat,
  )

const rose = (events: readonly Standing[], id: string, since: number | null) =>
  events.some(
    ({ kind, about, at }) => kind === 'rise' && about.id === id && (since === null || at >= since),
  )

const photographed = (events: readonly Standing[], since: number | null) =>
  events.some(({ kind, at }) => kind === 'photo' && (since === null || at >= since))
