import { expect, it } from 'vitest'
import { dayCost } from '@/core/clock-plan/day-cost.ts'
import { taskKey } from '@/core/clock-plan/day-tasks.ts'
import { type PlannedDay, plannedDay } from '@/core/clock-plan/planned-day.ts'
import { plannedTimes } from '@/core/fairness/planned-times.ts'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Session } from '@/core/session/session-record.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { madeLog } from '../session/made-events.ts'
import { madeSession } from '../session/made-session.ts'
import { randomPlan } from './random-plan.ts'

const startAt = 1_700_000_000_000

/**
 * A day on which everything is done at the second at which the Bench asks for it. A piece is stamped as in the oven once the
 * hands have put it there. Answers the stamps by task, in seconds from the first.
 */
function dayByTheBench(plan: Plan, session: Session, day: PlannedDay) {
  const { events, log } = madeLog()
  let now = startAt
  for (;;) {
    const items = agenda(session, plan, effectiveEvents(events), now, day)
    const [first] = items
    if (!first) break
    const dueAt = first.dueAt ?? now
    expect(dueAt).toBeGreaterThanOrEqual(now)
    now = dueAt
    for (const item of items.filter((one) => one === first || one.dueAt === dueAt)) {
      const { unit: about, step, repeat } = item
      const at = item.do === 'start' && step.kind === 'bake' ? now + step.handsSeconds * 1000 : now
      const kind = item.do === 'start' ? 'step-started' : 'step-stopped'
      log({ kind, stepId: step.id, repeat }, { about, at })
    }
  }
  const runs = stepRuns(session, plan, effectiveEvents(events))
  return new Map(
    runs.map((run) => {
      const inHands = run.step.kind === 'bake' ? run.step.handsSeconds : 0
      const begin = ((run.startedAt ?? Number.NaN) - startAt) / 1000 - inHands
      return [taskKey(run), [begin, ((run.stoppedAt ?? Number.NaN) - startAt) / 1000]]
    }),
  )
}

const parts = [0, 1, 2, 3, 4, 5]

it.each(parts)(
  'asks, judges and states one day, to the second, in 50 seeded plans of %i',
  (part) => {
    let waits = 0
    for (let seed = part * 50 + 1; seed <= part * 50 + 50; seed += 1) {
      const plan = randomPlan(seed)
      const session = madeSession(plan, [], seed)
      const day = plannedDay(plan, session)
      const worked = dayByTheBench(plan, session, day)
      const asked = day.tasks.map((task) => [taskKey(task), ...(worked.get(taskKey(task)) ?? [])])
      const planned = day.tasks.map((task) => [taskKey(task), task.beginSeconds, task.endSeconds])
      expect([seed, asked]).toEqual([seed, planned])
      expect(worked.size).toBe(day.tasks.length)

      const cost = dayCost(plan, session)
      const ends = [...worked.values()].map(([, end]) => end ?? 0)
      expect(cost).toMatchObject({ ok: true, spanSeconds: Math.max(...ends) })

      const times = plannedTimes(plan, session)
      const eaten = times.map(({ pieceId }) => lastOf(session, worked, pieceId))
      for (const [at, time] of times.entries()) {
        waits += time.waitedSeconds > 0 ? 1 : 0
        const { out, begin, mixed } = workedTimes(plan, session, worked, time.pieceId)
        expect([seed, time.outSeconds]).toEqual([seed, out])
        const mouth = plan.serving === 'as-baked' ? (eaten[at] ?? 0) : Math.max(...eaten)
        expect([seed, time.ageSeconds]).toEqual([seed, mouth - out])
        expect([seed, time.methodSeconds + time.waitedSeconds]).toEqual([seed, begin - mixed])
      }
    }
    // The plans are no easy ones: many a piece waits for the oven.
    expect(waits).toBeGreaterThan(40)
  },
)

/** The last thing done to a piece or to its dough. */
function lastOf(session: Session, worked: ReadonlyMap<string, number[]>, pieceId: string): number {
  const batchId = session.pieces.find(({ id }) => id === pieceId)?.batchId ?? ''
  const own = [...worked].filter(([key]) => [pieceId, batchId].includes(key.split(' ')[0] ?? ''))
  return Math.max(...own.map(([, [, end]]) => end ?? 0))
}

/** When a piece was out of the oven and taken up for it, and its dough begun, by the stamps of the day. */
function workedTimes(
  plan: Plan,
  session: Session,
  worked: ReadonlyMap<string, number[]>,
  pieceId: string,
) {
  const batchId = session.pieces.find(({ id }) => id === pieceId)?.batchId ?? ''
  const stamps = (stepId: string) =>
    worked.get(`${pieceId} ${stepId} 1`) ?? worked.get(`${batchId} ${stepId} 1`) ?? []
  const bakes = plan.steps.filter(({ kind }) => kind === 'bake')
  const [begin = Number.NaN] = stamps(bakes[0]?.id ?? '')
  const [, out = Number.NaN] = stamps(bakes.at(-1)?.id ?? '')
  const [mixed = Number.NaN] = stamps('mix')
  return { begin, out, mixed }
}
