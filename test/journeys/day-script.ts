import type { Event } from '@/core/session/event-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'

/** A line of the run sheet as it stands on the screen or on paper. */
export interface SheetLine {
  at: number
  /** "Fold, dough 2". */
  step: string
  dough: number
  handsSeconds: number
  /** "helper 1", or nothing of the baker's own work. */
  by: string
}

/** An entry of the log in the words of the script: what, of which dough, of which step, at which second, and what was read. */
export interface Entry {
  kind: string
  letter: string
  step?: string
  at: string
  value?: number
}

/** One press of the normal way: when, with which dough in front, what is pressed, and what the log then holds more. */
export interface Act {
  at: number
  letter: string
  press: string | RegExp
  /** Whose hands it is for, where it is a helper's to begin. */
  by?: string
  logs: Omit<Entry, 'at' | 'letter'>[]
}

/** "Sat 08:43:00" on the wall of the plan's zone. */
export function wallSecond(at: number, zone: string): string {
  const { year, month, day, hour, minute } = civilTime(at, zone)
  const weekday = new Date(Date.UTC(year, month - 1, day)).toUTCString().slice(0, 3)
  const two = (value: number) => String(value).padStart(2, '0')
  return `${weekday} ${two(hour)}:${two(minute)}:${two(Math.floor(at / 1000) % 60)}`
}

/**
 * The presses of a day that is worked as its run sheet says, in the order of the clock: what ends comes before what begins. The
 * steps of each dough follow one another, so that one press ends a wait and begins the next; `late` tells by how many seconds
 * a dough is behind its sheet from one of its steps on.
 */
export function scriptOfSheet(
  lines: readonly SheetLine[],
  letterOf: (dough: number) => string,
  late: { dough: number; from: string; seconds: number },
): Act[] {
  const acts = [...new Set(lines.map(({ dough }) => dough))].flatMap((dough) => {
    const own = lines.filter((line) => line.dough === dough)
    const letter = letterOf(dough)
    const from = dough === late.dough ? own.findIndex(({ step }) => step === late.from) : own.length
    return own.flatMap(({ step, handsSeconds, by, ...line }, place): Act[] => {
      const at = line.at + (from >= 0 && place >= from ? late.seconds * 1000 : 0)
      const over = at + handsSeconds * 1000
      const before = own[place - 1]?.step
      const begins = { kind: 'step-started', step }
      const ends = { kind: 'step-stopped', step: before ?? '' }
      const act = (moment: number, press: Act['press'], ...logs: Act['logs']): Act => ({
        ...{ at: moment, letter, press, logs },
      })
      if (step === 'Bake')
        return [
          act(at, new RegExp(`^Launch ${letter} ends ${before}`), ends, { kind: 'bake-in', step }),
        ]
      if (step === 'Out of the oven')
        return [act(at, `Pull ${letter}`, { kind: 'bake-out', step: 'Bake' })]
      const first = before === undefined || before === 'Out of the oven'
      const press = first ? 'Begin' : new RegExp(`^(Rest over|Done) and ${step} begins$`)
      const begun = { ...act(at, press, ...(first ? [] : [ends]), begins), by }
      if (handsSeconds === 0) return [begun]
      if (place === own.length - 1)
        return [begun, act(over, /^Done/, { kind: 'step-stopped', step })]
      return [begun, act(over, 'Hands off', { kind: 'hands-off', step })]
    })
  })
  const turn = ({ logs }: Act) => (logs.at(-1)?.kind === 'hands-off' ? 0 : 1)
  return acts.toSorted((one, other) => one.at - other.at || turn(one) - turn(other))
}

/** What the log on disk says of a session, in the words of the script and the order it was written. */
export function toldByLog(events: readonly Event[], session: Session, plan: Plan): Entry[] {
  const letters = new Map(session.batches.map(({ id, letter }) => [id, letter]))
  for (const { id, batchId } of session.pieces) letters.set(id, letters.get(batchId) ?? '')
  return events
    .filter(({ kind }) => kind !== 'lock')
    .toSorted((one, other) => one.count - other.count)
    .map((event): Entry => {
      const step = 'stepId' in event ? plan.steps.find(({ id }) => id === event.stepId) : undefined
      const value =
        event.kind === 'temperature'
          ? event.celsius
          : event.kind === 'weighed'
            ? event.grams
            : undefined
      return {
        ...{ kind: event.kind, letter: letters.get(event.about.id) ?? event.about.kind },
        ...(step ? { step: step.name } : {}),
        at: wallSecond(event.at, plan.zone),
        ...(value === undefined ? {} : { value }),
      }
    })
}
