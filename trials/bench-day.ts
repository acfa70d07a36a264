import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { EventLog } from './event-maker.ts'

export interface BenchTruth {
  /** How the doughs behave at a level: handling score, share lost in the oven, rise and dough temperature. */
  stickiness?: (level: number) => number
  massInGrams: (level: number) => number
  bakeLossPercent: (level: number) => number
  doughCelsius: (level: number) => number
  dustingGrams: (level: number) => number
}

interface BenchDay {
  plan: Plan
  session: Session
  kitchen: readonly KitchenThing[]
  log: EventLog
  truth: BenchTruth
  noise: (sd: number) => number
  /** When the first dough is weighed, UTC ms. */
  startAt: number
  staggerSeconds: number
  /** Nothing later than this is logged: a day that is still being worked. */
  untilAt?: number
}

type Line = { at: number; say: Parameters<EventLog['write']>[1] }

/** Works one session at the bench: weights, steps, temperatures, handling scores, the oven. Invented, from the truth given. */
export function workDay(day: BenchDay): void {
  const { session, log, untilAt = Number.POSITIVE_INFINITY } = day
  const lines = session.dealt.doughOrder
    .flatMap((batchId, index) => batchLines(day, batchId, index))
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
  const lines: Line[] = weighingLines(day, batchId, level, at - 6 * 60_000)
  let mixed = false
  for (const step of plan.steps) {
    if (step.per === 'piece') {
      lines.push(...pieceLines(day, batchId, level, step, at))
    } else {
      for (let repeat = 1; repeat <= step.repeats; repeat += 1) {
        const seconds = step.handsSeconds + step.waitSeconds + Math.round(noise(12))
        lines.push(
          { at, say: { kind: 'step-started', about, at, stepId: step.id, repeat } },
          stopped(about, at + seconds * 1000, step, repeat),
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

const stopped = (about: Line['say']['about'], at: number, step: Step, repeat: number): Line => ({
  at,
  say: { kind: 'step-stopped', about, at, stepId: step.id, repeat },
})

function weighingLines(day: BenchDay, batchId: string, level: Level, at: number): Line[] {
  const { plan, kitchen, noise } = day
  const batch = weighSheet(plan, kitchen).batches.find(({ levelId }) => levelId === level.id)
  const weighed = batch?.lines.filter(({ what }) => what === 'ingredient') ?? []
  return weighed.flatMap((line, index) => {
    if (line.ingredientId === null) return []
    const step = line.resolutionGrams ?? 1
    const slip = Math.round(noise(0.5)) * step
    const moment = at + index * 40_000
    return {
      at: moment,
      say: {
        kind: 'weighed',
        about: { kind: 'batch', id: batchId },
        at: moment,
        ingredientId: line.ingredientId,
        grams: roundToStep(Math.max(0, line.grams + slip), step),
        ...(line.prefermentId === null ? {} : { prefermentId: line.prefermentId }),
      },
    } satisfies Line
  })
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

function pieceLines(
  day: BenchDay,
  batchId: string,
  level: Level,
  step: Step,
  startAt: number,
): Line[] {
  const pieces = piecesInOvenOrder(day.session, batchId)
  return pieces.flatMap(({ id, turn }) => {
    const about = { kind: 'piece' as const, id }
    const at = startAt + turn * (step.kind === 'bake' ? 60_000 : 25_000)
    const seconds = step.handsSeconds + step.waitSeconds + Math.round(day.noise(4))
    const end = at + seconds * 1000
    if (step.kind !== 'bake') {
      return [
        { at, say: { kind: 'step-started', about, at, stepId: step.id, repeat: 1 } },
        stopped(about, end, step, 1),
      ] satisfies Line[]
    }
    const massIn = roundToStep(day.truth.massInGrams(level.value ?? 0) + day.noise(1.5), 1)
    const loss = day.truth.bakeLossPercent(level.value ?? 0) + day.noise(0.35)
    const cooled = end + 3_600_000
    return [
      { at, say: { kind: 'mass', about, at, when: 'in', grams: massIn } },
      { at, say: { kind: 'bake-in', about, at } },
      { at: end, say: { kind: 'bake-out', about, at: end } },
      {
        at: cooled,
        say: {
          kind: 'mass',
          about,
          at: cooled,
          when: 'cooled',
          grams: roundToStep(massIn * (1 - loss / 100), 1),
        },
      },
    ] satisfies Line[]
  })
}

/** The pieces of a dough with their turn at the oven within it. */
function piecesInOvenOrder(session: Session, batchId: string): { id: string; turn: number }[] {
  const loaded = session.dealt.loads
    .toSorted((one, other) => one.number - other.number)
    .flatMap(({ pieceIds }) => pieceIds)
  return session.pieces
    .filter((piece) => piece.batchId === batchId && piece.role !== 'spare')
    .map(({ id }) => ({ id, place: loaded.indexOf(id) }))
    .toSorted((one, other) => one.place - other.place)
    .map(({ id }, turn) => ({ id, turn }))
}
