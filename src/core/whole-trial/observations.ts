import { keptAnswer } from '@/core/record/kept-answer.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { eventsOfSession } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import type { TastingRecords } from '@/core/tasting/tasting-records.ts'
import { bakerObservations } from './baker-observations.ts'
import type { Observation, Observed } from './observed.ts'
import { tasterObservations } from './taster-observations.ts'
import { toldTrial } from './told-trial.ts'

type AllObserved = { ok: true } & Observed

export type Observations = AllObserved | { ok: false; reason: 'still-sealed' }

/**
 * Every answer of the trial, one row a value: what tasters scored, what the baker measured or scored, and what the notebook
 * worked out from the bench; beside them the cells that stayed empty, with why. Bake losses of topped pieces are left out
 * where any plain piece was weighed; so are sessions of which nobody can tell the levels any more. Refused while a session is sealed, unless the one who asks says that the look is known.
 */
export function observations(
  whole: TastingRecords,
  { unsealed }: { unsealed: boolean },
): Observations {
  if (!unsealed && sealed(whole)) return { ok: false, reason: 'still-sealed' }
  const { sessions, events, ballots } = whole
  return allObserved(whole, `${sessions.length} ${events.length} ${ballots.length}`)
}

/** Findings, the table's own findings and the report ask one after another for the same. */
const allObserved = keptAnswer((whole: TastingRecords, _lengths: string): AllObserved => {
  const told = toldTrial(whole)
  const sessions = told.sessions.toSorted((one, other) => one.number - other.number)
  const observed = sessions.map((session) => ofSession(told, session))
  const topped = new Set(observed.flatMap((one) => one.topped))
  const measured = observed.flatMap((one) => one.baker.rows)
  const rows = [
    ...observed.flatMap((one) => one.taster.rows),
    ...measured.filter((row) => !topped.has(row) || !hasPlain(row, measured, topped)),
  ]
  const gaps = observed.flatMap((one) => [...one.taster.gaps, ...one.baker.gaps])
  return { ok: true, rows, gaps }
})

function ofSession(whole: TastingRecords, session: Session) {
  const plan = whole.plans.find((one) => one.id === session.planId)
  if (!plan) throw new Error(`session ${session.id} runs no plan of this trial`)
  const effective = eventsOfSession(whole.events, session.id)
  const ballots = effectiveBallots(whole.ballots, session.id)
  const baker = bakerObservations(session, plan, effective)
  return {
    taster: tasterObservations(session, plan, effective, ballots),
    baker,
    topped: baker.topped,
  }
}

const hasPlain = (
  row: Observation,
  all: readonly Observation[],
  topped: ReadonlySet<Observation>,
) => all.some((other) => other.responseId === row.responseId && !topped.has(other))
