import { expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { ovenCues } from '@/core/session/oven/oven-cues.ts'
import { ovenNow } from '@/core/session/oven/oven-now.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { madePlan } from '../../made-plan.ts'
import { madeLog } from '../made-events.ts'
import { madeSession, nth } from '../made-session.ts'

const plan = madePlan()
const session = madeSession(plan)
const flight = nth(session.dealt.flights, 0)
const [one = '', two = ''] = flight.pieceIds
const piece = (id: string) => ({ kind: 'piece', id }) as const

it('knows what is inside, when it is due out, what goes in next and how many places are free', () => {
  const { events, log } = madeLog()
  log({ kind: 'bake-in' }, { about: piece(one), at: 100_000 })
  const effective = effectiveEvents(events)
  const runs = stepRuns(session, plan, effective)
  const items = agenda(session, plan, effective, 160_000)
  const oven = ovenNow(session, plan, items, runs)
  // 240 s in the oven.
  expect(oven.inside).toMatchObject([
    { inAt: 100_000, outAt: 340_000, halfAt: 220_000, item: { unit: piece(one) } },
  ])
  expect(oven.freePlaces).toBe(plan.placesPerLoad - 1)
  log({ kind: 'bake-out' }, { about: piece(one), at: 340_000 })
  const then = effectiveEvents(events)
  const after = ovenNow(
    session,
    plan,
    agenda(session, plan, then, 350_000),
    stepRuns(session, plan, then),
  )
  expect(after.inside).toEqual([])
  expect(after.freePlaces).toBe(plan.placesPerLoad)
  expect(two).not.toBe('')
})

it('cues turn at half, soon twenty seconds before, and pull; a short bake has no turn', () => {
  const { events, log } = madeLog()
  log({ kind: 'bake-in' }, { about: piece(one), at: 0 })
  const effective = effectiveEvents(events)
  const { inside } = ovenNow(
    session,
    plan,
    agenda(session, plan, effective, 1000),
    stepRuns(session, plan, effective),
  )
  expect(ovenCues(inside).map(({ say, at }) => [say, at / 1000])).toEqual([
    ['turn', 120],
    ['soon', 220],
    ['pull', 240],
  ])
  const short = inside.map((each) => ({ ...each, outAt: 60_000, halfAt: 30_000 }))
  expect(ovenCues(short).map(({ say }) => say)).toEqual(['soon', 'pull'])
})
