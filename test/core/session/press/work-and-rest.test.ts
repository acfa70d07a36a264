import { expect, test } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { departures } from '@/core/session/departures.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { handsOffPress, skipPress, stepPress } from '@/core/session/press/step-press.ts'
import { earlyEnd } from '@/core/session/press/untimely-end.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { earlyEndText } from '@/core/wording/bench/early-end-text.ts'
import { made, withSteps } from './one-fold.ts'

const minutes = (count: number) => 1_000_000 + count * 60_000

/** The day at `now` (in minutes) after these presses: its items, runs and the log. */
function day(plan: Plan, now: number, write: (own: ReturnType<typeof made>) => void = () => {}) {
  const own = made(plan)
  write(own)
  const effective = effectiveEvents(own.events)
  const { session } = own
  return {
    ...own,
    items: agenda(session, plan, effective, minutes(now)),
    runs: stepRuns(session, plan, effective),
    effective,
  }
}

test('hands off ends the work, not the step: the rest is due its whole length later', () => {
  const plan = withSteps({
    handsSeconds: 60,
    waitSeconds: 1800,
    earlySeconds: 120,
    lateSeconds: 120,
  })
  const begun = day(plan, 2, ({ first, press }) =>
    press(minutes(0), { kind: 'step-started', about: first }),
  )
  const item = begun.items.find(({ unit }) => unit.id === begun.first.id)
  expect(item).toMatchObject({ do: 'end', handsOn: true, dueAt: minutes(31) })
  expect(item && handsOffPress(item).map(({ kind }) => kind)).toEqual(['hands-off'])
  // The work took 4 minutes in place of one; the rest is 30 minutes from there.
  const resting = day(plan, 5, ({ first, press }) => {
    press(minutes(0), { kind: 'step-started', about: first })
    press(minutes(4), { kind: 'hands-off', about: first })
  })
  expect(resting.items.find(({ unit }) => unit.id === resting.first.id)).toMatchObject({
    ...{ do: 'end', handsOn: false, dueAt: minutes(34) },
  })
})

test('ending a rest early costs what is left of it; at its time, give or take its tolerance, it costs nothing', () => {
  const plan = withSteps({
    handsSeconds: 60,
    waitSeconds: 1800,
    earlySeconds: 120,
    lateSeconds: 120,
  })
  const { runs, session, first, second } = day(plan, 12, ({ first, second, press }) => {
    press(minutes(-60), { kind: 'step-started', about: second })
    press(minutes(-59), { kind: 'hands-off', about: second })
    press(minutes(-29), { kind: 'step-stopped', about: second })
    press(minutes(0), { kind: 'step-started', about: first })
    press(minutes(2), { kind: 'hands-off', about: first })
  })
  const run = runs.find(({ unit }) => unit.id === first.id)
  const at = (minute: number) => run && earlyEnd(run, runs, minutes(minute))
  expect(at(12)).toEqual({
    ...{ leftSeconds: 1200, restedSeconds: 600, plannedSeconds: 1800 },
    others: [{ unit: { kind: 'batch', id: second.id }, restedSeconds: 1800 }],
  })
  // 28 minutes of rest are within two minutes of 30.
  expect(at(30)).toBeNull()
  expect(at(29.9)).not.toBeNull()
  const text = earlyEndText(at(12) as never, session)
  expect(text).toMatch(/^20 min are left: ended now it has had a rest of 10 min, planned 30 min\./)
  expect(text).toMatch(/The others had: [A-Z] 30 min\.$/)
})

test('a step that is skipped starts nothing: the next is asked for, due when the one before was done', () => {
  const plan = withSteps(
    { handsSeconds: 60, waitSeconds: 1800, earlySeconds: 120, lateSeconds: 120 },
    2,
  )
  const { items, runs, session, events, first } = day(plan, 40, ({ first, press }) => {
    press(minutes(0), { kind: 'step-skipped', about: first })
  })
  const item = items.find(({ unit }) => unit.id === first.id)
  expect(item).toMatchObject({ do: 'start', repeat: 2 })
  expect(runs.filter(({ startedAt }) => startedAt !== null)).toEqual([])
  expect(item && skipPress(item)).toEqual([
    { kind: 'step-skipped', about: first, stepId: 'fold', repeat: 2 },
  ])
  const found = departures({ session, plan, events })
  expect(found).toMatchObject([{ what: 'step-missing', unit: first, stepId: 'fold', repeat: 1 }])
})

test('a step done once for all doughs is asked for once, and logged of each of them', () => {
  const step = { handsSeconds: 300, waitSeconds: 0, earlySeconds: 0, lateSeconds: 0 }
  const all = day(withSteps({ ...step, once: true }), 0)
  expect(all.items).toHaveLength(1)
  const doughs = all.session.dealt.doughOrder.map((id) => ({ kind: 'batch', id }))
  expect(all.items[0]?.units).toEqual(doughs)
  const [item] = all.items
  expect(item && stepPress(all.session, item, [])).toEqual(
    doughs.map((about) => ({ kind: 'step-started', about, stepId: 'fold', repeat: 1 })),
  )
  expect(day(withSteps(step), 0).items).toHaveLength(doughs.length)
})
