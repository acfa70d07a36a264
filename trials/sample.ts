import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { roundToStep } from '@/core/units/round-to-step.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { type BenchTruth, type Line, workDay } from './bench-day.ts'
import { clubKitchen } from './club-kitchen.ts'
import { eventLog } from './event-maker.ts'
import { idsFor } from './ids.ts'
import { normalsFrom } from './noise.ts'
import { dealt } from './sample-session.ts'
import { panelOf, type Spreads, type TasteTruth, tastingHour } from './tasting-hour.ts'
import { eveningBeforeHours } from './weighing-lines.ts'

export interface Sample {
  name: string
  seed: number
  note: string
  initials: readonly string[]
  plan: (newId: () => string, trialId: string, kitchen: readonly KitchenThing[], at: number) => Plan
  /** When each session's first dough is weighed, UTC ms. */
  days: readonly number[]
  staggerSeconds: number
  /** The last moment that is logged, for a day still being worked; a finished day has none. */
  untilAt?: number
  bench: BenchTruth
  taste: TasteTruth
  spreads: Spreads
  roomCelsius: number
}

const hours = 3_600_000

/** A sample trial, made whole from its seed: the same file every time. */
export function wholeSample(sample: Sample): WholeTrial {
  const newId = idsFor(sample.name)
  const trialId = newId()
  const kitchen = clubKitchen(sample.initials)
  const firstAt = sample.days[0] ?? 0
  const plan = sample.plan(newId, trialId, kitchen, firstAt - 48 * hours)
  const log = eventLog({ trialId, zone: plan.zone, newId })
  const noise = normalsFrom(sample.seed, 7)
  const panel = panelOf(normalsFrom(sample.seed, 8), sample.spreads)
  const sessions: Session[] = []
  const ballots: Ballot[] = []
  for (const startAt of sample.days) {
    const session = dealt({
      ...{ plan, trialSeed: sample.seed, earlier: sessions, newId },
      at: startAt - (plan.formula.preferments.length > 0 ? eveningBeforeHours + 1 : 2) * hours,
    })
    sessions.push(session)
    const besides = [roomReading(session.id, startAt, sample.roomCelsius + noise(0.4))]
    if (sessions.length === 1) besides.push(lockLine(trialId, startAt))
    workDay({
      ...{ plan, session, kitchen, log, truth: sample.bench, noise, startAt, besides },
      staggerSeconds: sample.staggerSeconds,
      ...(sample.untilAt === undefined ? {} : { untilAt: sample.untilAt }),
    })
    if (sample.untilAt !== undefined) continue
    const lastAt = Math.max(...log.events.map(({ at }) => at))
    const tasted = tastingHour({
      ...{ plan, session, log, newId, panel, noise, truth: sample.taste },
      ...{ spreads: sample.spreads, startAt: lastAt + hours / 2 },
    })
    ballots.push(...tasted)
    const unsealedAt = Math.max(...tasted.map(({ at }) => at)) + 120_000
    log.write(session.id, {
      kind: 'unsealed',
      about: { kind: 'session', id: session.id },
      at: unsealedAt,
    })
  }
  const trial = {
    ...{ id: trialId, createdAt: firstAt - 50 * hours, zone: plan.zone, planId: plan.id },
    ...{ seed: sample.seed, revision: log.events.length + ballots.length, note: sample.note },
  }
  return { trial, plans: [plan], sessions, events: log.events, ballots, photos: [], kitchen }
}

/** Question, expectation and main response are locked as the first dough is mixed. */
const lockLine = (trialId: string, at: number): Line => ({
  at,
  say: { kind: 'lock', about: { kind: 'trial', id: trialId }, at },
})

function roomReading(sessionId: string, startAt: number, celsius: number): Line {
  const at = startAt - 2 * 60_000
  const about = { kind: 'session' as const, id: sessionId }
  return {
    at,
    say: { kind: 'temperature', about, at, of: 'room', celsius: roundToStep(celsius, 0.1) },
  }
}
