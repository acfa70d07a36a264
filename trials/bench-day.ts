import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import type { EventLog } from './event-maker.ts'
import { pieceLines } from './piece-lines.ts'
import { stoppedLine } from './stopped-line.ts'
import { weighingLines } from './weighing-lines.ts'

export interface BenchTruth {
  /** How the doughs behave at a level: handling score, share lost in the oven, rise and dough temperature. */
  stickiness?: (level: number) => number
  massInGrams: (level: number) => number
  bakeLossPercent: (level: number) => number
  doughCelsius: (level: number) => number
  dustingGrams: (level: number) => number
}

export interface BenchDay {
  plan: Plan
  session: Session
  kitchen: readonly KitchenThing[]
  log: EventLog
  truth: BenchTruth
  noise: (sd: number) => number
  /** When the first dough is weighed, UTC ms. */
  startAt: number
  staggerSeconds: number
  /** What else was written down that day. */
  besides: readonly Line[]
  /** Nothing later than this is logged: a day that is still being worked. */
  untilAt?: number
}

export type Line = { at: number; say: Parameters<EventLog['write']>[1] }

/** Works one session at the bench: weights, steps, temperatures, handling scores, the oven. Invented, from the truth given. */
export function workDay(day: BenchDay): void {
  const { session, log, untilAt = Number.POSITIVE_INFINITY } = day
  const worked = session.dealt.doughOrder.flatMap((batchId, index) =>
    batchLines(day, batchId, index),
  )
  const lines = [...day.besides, ...worked]
    .filter(({ at }) => at <= untilAt)
    .toSorted((one, other) => one.at - other.at)
  for (const { say } of lines) log.write(session.id, say)
}

function batchLines(day: BenchDay, batchId: string, index: number): Line[] {
  const { plan, session, truth, noise, startAt, staggerSeconds } = day
  const batch = session.batches.find(({ id }) => id === batchId)
  const level = plan.levels.find(({ id }) => id === batch?.levelId)
  if (!level || level.value === null) throw new Error('sample batches have a measured level')
  const about = { kind: 'batch' as const, id: batchId }
  let at = startAt + index * staggerSeconds * 1000
  const lines: Line[] = weighingLines(day, batchId, level, index)
  let mixed = false
  for (const step of plan.steps) {
    if (step.kind === 'mix') lines.push(...waterLines(day, batchId, level, at - 20_000))
    if (step.per === 'piece') {
      lines.push(...pieceLines(day, batchId, level, step, at))
    } else {
      for (let repeat = 1; repeat <= step.repeats; repeat += 1) {
        const seconds = step.handsSeconds + step.waitSeconds + Math.round(noise(12))
        lines.push(
          { at, say: { kind: 'step-started', about, at, stepId: step.id, repeat } },
          stoppedLine(about, at + seconds * 1000, step, repeat),
        )
        at += seconds * 1000
      }
    }
    if (step.kind === 'mix') {
      mixed = true
      const readAt = at - step.waitSeconds * 1000
      const celsius = roundToStep(truth.doughCelsius(level.value) + noise(0.3), 0.1)
      lines.push({
        at: readAt,
        say: { kind: 'temperature', about, at: readAt, of: 'dough', celsius },
      })
    }
    if (step.kind === 'fold' && mixed) lines.push(...handlingLines(day, batchId, level.value, at))
    if (step.per === 'piece') at += (step.handsSeconds + step.waitSeconds) * 1000
  }
  return lines
}

/** The water's temperature as it was poured: what the plan asks for, read to a tenth. */
function waterLines(
  { plan, kitchen }: BenchDay,
  batchId: string,
  level: Level,
  at: number,
): Line[] {
  const planned = waterPlan(plan, kitchen)
  const batch = planned.ok ? planned.batches.find(({ levelId }) => levelId === level.id) : undefined
  if (!batch) return []
  const celsius = roundToStep(batch.waterCelsius, 0.1)
  const about = { kind: 'batch' as const, id: batchId }
  return [{ at, say: { kind: 'temperature', about, at, of: 'water', celsius } }]
}

function handlingLines(day: BenchDay, batchId: string, level: number, at: number): Line[] {
  const { plan, truth, noise } = day
  const about = { kind: 'batch' as const, id: batchId }
  const response = plan.responses.find(({ by, about: of }) => by === 'baker' && of === 'batch')
  const grams = Math.max(0, Math.round(truth.dustingGrams(level) + noise(0.6)))
  const dusted: Line[] =
    grams > 0 ? [{ at, say: { kind: 'worked-in', about, at, what: 'dusting-flour', grams } }] : []
  if (!response || !truth.stickiness) return dusted
  const value = Math.min(9, Math.max(1, Math.round(truth.stickiness(level) + noise(0.4))))
  const moment = at + 20_000
  return [
    ...dusted,
    { at: moment, say: { kind: 'measured', about, at: moment, responseId: response.id, value } },
  ]
}
