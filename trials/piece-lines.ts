import type { Session } from '@/core/session/session-record.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Step } from '@/core/trial/step.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import type { BenchDay, Line } from './bench-day.ts'
import { stoppedLine } from './stopped-line.ts'

/** A step that is done piece by piece; baking keeps the masses before and after. */
export function pieceLines(
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
        stoppedLine(about, end, step, 1),
      ] satisfies Line[]
    }
    const bake = { stepId: step.id, repeat: 1 }
    const massIn = roundToStep(day.truth.massInGrams(level.value ?? 0) + day.noise(1.5), 1)
    const loss = day.truth.bakeLossPercent(level.value ?? 0) + day.noise(0.35)
    const cooled = end + 3_600_000
    return [
      { at, say: { kind: 'mass', about, at, when: 'in', grams: massIn } },
      { at, say: { kind: 'bake-in', about, at, ...bake } },
      { at: end, say: { kind: 'bake-out', about, at: end, ...bake } },
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
