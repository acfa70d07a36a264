import type { Plan } from '@/core/trial/plan-record.ts'
import { piecesOfBatch, type Unit } from './line.ts'
import type { Session } from './session-record.ts'
import { runSeconds, type StepRun } from './step-runs.ts'

/** A bake that is to begin; `dueAt` (UTC ms) is when what comes before it ended, null where nothing tells. */
export interface ToBake {
  run: StepRun
  dueAt: number | null
}

/** What stands in the oven, stood or will stand there, from and until (UTC ms), and how many places it takes. */
interface Baking {
  inAt: number
  outAt: number
  places: number
  /** What the oven is at for it; undefined where the plan does not say. */
  celsius: number | undefined
}

/**
 * The bakes to begin in the order of their loads, what is in no load last, each due when it is ready and a place in the oven is
 * free, as the plan foresees it; a whole dough takes a place for each of its pieces, and what wants the oven at another
 * temperature takes all of them. What is inside past its time keeps its place until it is taken out, and what is not in yet
 * takes its work and its bake from `now` (UTC ms) on, so that nothing falls due, or late, before it could go in. `begun` are
 * the bakes in the oven or out of it.
 */
export function ovenTurns<Each extends ToBake>(
  session: Session,
  plan: Plan,
  begun: readonly StepRun[],
  waiting: readonly Each[],
  now: number,
): Each[] {
  const loaded = session.dealt.loads
    .toSorted((one, other) => one.number - other.number)
    .flatMap((load) => load.pieceIds)
  const turnOf = ({ run: { unit } }: Each) =>
    loaded.includes(unit.id) ? loaded.indexOf(unit.id) : loaded.length
  const placesOf = (unit: Unit) => Math.min(piecesIn(session, unit), plan.placesPerLoad)
  const baking: Baking[] = begun.map((run) => {
    const inAt = run.startedAt ?? now
    const outAt = run.stoppedAt ?? Math.max(now, inAt + runSeconds(run.step) * 1000)
    return { inAt, outAt, places: placesOf(run.unit), celsius: run.step.celsius }
  })
  return waiting
    .toSorted((one, other) => turnOf(one) - turnOf(other))
    .map((each) => {
      const { step, unit } = each.run
      const places = placesOf(unit)
      const { celsius } = step
      const beside = baking.map((other) =>
        other.celsius === celsius ? other : { ...other, places: plan.placesPerLoad },
      )
      const freeAt = freeSince(beside, plan.placesPerLoad - places)
      const ready = each.dueAt
      const dueAt = ready === null ? freeAt : Math.max(ready, freeAt ?? ready)
      const inAt = Math.max(dueAt ?? now, now)
      baking.push({
        inAt,
        outAt: inAt + (step.handsSeconds + runSeconds(step)) * 1000,
        places,
        celsius,
      })
      return { ...each, dueAt }
    })
}

function piecesIn(session: Session, unit: Unit): number {
  return unit.kind === 'piece'
    ? 1
    : piecesOfBatch(session, unit.id).filter(({ role }) => role !== 'spare').length
}

/** The moment from which on no more than `most` places are taken; null when there never were more. */
function freeSince(baking: readonly Baking[], most: number): number | null {
  const takenAt = (moment: number) =>
    baking
      .filter(({ inAt, outAt }) => inAt <= moment && moment < outAt)
      .reduce((total, { places }) => total + places, 0)
  const full = baking.map(({ inAt }) => inAt).filter((moment) => takenAt(moment) > most)
  if (full.length === 0) return null
  const lastFull = Math.max(...full)
  const outs = baking.map(({ outAt }) => outAt).toSorted((one, other) => one - other)
  return outs.find((moment) => moment > lastFull && takenAt(moment) <= most) ?? null
}
