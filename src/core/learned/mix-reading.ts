import type { Standing } from '@/core/session/effective-events.ts'
import { runSeconds, type StepRun } from '@/core/session/step-runs.ts'
import { type TemperatureReading, temperaturesOf } from '@/core/session/temperatures.ts'

/** A dough's reading counts as the mixer's work up to this long after the mix: later, room and proof have worked on it too. */
const longestAfterMixSeconds = 15 * 60

/** Temperatures around one mix, °C; null where none was logged in time. The dough's is that of the whole mix. */
export interface MixReading {
  doughCelsius: number
  waterCelsius: number | null
  flourCelsius: number | null
  prefermentCelsius: number | null
  roomCelsius: number | null
}

export type MixReadingTrouble = 'mix-not-logged' | 'dough-not-read'

/**
 * What the thermometer said around a dough's mix: the first dough reading from its start to a quarter of an hour after its
 * end; of water, flour, preferment and room the last one up to then, of this dough or else of the session. Several mixes of
 * one dough count to the end of the last.
 */
export function mixReading(
  batchId: string,
  runs: readonly StepRun[],
  effective: readonly Standing[],
): ({ ok: true } & MixReading) | { ok: false; reason: MixReadingTrouble } {
  const mixes = runs.filter(
    ({ unit, step, startedAt }) => unit.id === batchId && step.kind === 'mix' && startedAt !== null,
  )
  const last = mixes.at(-1)
  if (!last || last.startedAt === null) return { ok: false, reason: 'mix-not-logged' }
  const endedAt = last.stoppedAt ?? last.startedAt + runSeconds(last.step) * 1000
  const until = endedAt + longestAfterMixSeconds * 1000
  const from = last.startedAt
  const dough = temperaturesOf(effective, 'dough', batchId).find(
    ({ at }) => at >= from && at <= until,
  )
  if (!dough) return { ok: false, reason: 'dough-not-read' }
  const before = (of: TemperatureReading['of']) => {
    const readings = temperaturesOf(effective, of).filter(({ at }) => at <= until)
    const own = readings.findLast(({ about }) => about.id === batchId)
    const any = readings.findLast(({ about }) => about.kind === 'session')
    return (own ?? any)?.celsius ?? null
  }
  return {
    ok: true,
    doughCelsius: dough.celsius,
    waterCelsius: before('water'),
    flourCelsius: before('flour'),
    prefermentCelsius: before('preferment'),
    roomCelsius: before('room'),
  }
}
