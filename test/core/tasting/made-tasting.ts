import type { Answer } from '@/core/seal/blind/answer.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from '../session/made-events.ts'
import { madeSession } from '../session/made-session.ts'

/** A trial's records being written: its log, and ballots sealed one after another. */
export function madeTasting(plan: Plan = madePlan(), sessions: Session[] = [madeSession(plan)]) {
  const { events, log } = madeLog()
  const ballots: Ballot[] = []
  const seal = (tasterId: string, about: Ballot['about'], change: Partial<Ballot> = {}): Ballot => {
    const ballot: Ballot = {
      id: `b-${ballots.length + 1}`,
      trialId: 'trial-a',
      sessionId: 'session-a',
      tasterId,
      device: 'device-a',
      count: 500 + ballots.length,
      at: 5_000_000 + ballots.length * 1000,
      startedAt: 5_000_000 + ballots.length * 1000 - 500,
      about,
      answers: answers(7, 3),
      ...change,
    }
    ballots.push(ballot)
    return ballot
  }
  const records = { plans: [plan], sessions, events, ballots }
  const present = (tasterId: string) =>
    log({ kind: 'present' }, { about: { kind: 'taster', id: tasterId } })
  return { records, log, seal, present }
}

/** Answers to the two questions of the made plan. */
export function answers(liking: number | null, salty: number | null, why?: string): Answer[] {
  const answer = (responseId: string, value: number | null): Answer => ({
    responseId,
    value,
    ...(why === undefined ? {} : { why }),
  })
  return [answer('liking', liking), answer('salty', salty)]
}
