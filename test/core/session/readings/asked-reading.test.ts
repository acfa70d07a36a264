import { expect, it } from 'vitest'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { askedReadings } from '@/core/session/readings/asked-reading.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { madePlan, madeStep } from '../../made-plan.ts'
import { madeLog } from '../made-events.ts'
import { madeSession } from '../made-session.ts'

const plan = madePlan({
  steps: [
    madeStep('mix', 'mix'),
    madeStep('fold', 'fold', { waitSeconds: 1800 }),
    madeStep('rest', 'rest', { handsSeconds: 0, waitSeconds: 3600 }),
    madeStep('divide', 'divide'),
    madeStep('bake', 'bake', { waitSeconds: 1200 }),
    madeStep('cut', 'cut'),
  ],
})
const session = madeSession(plan)
const [id = ''] = session.dealt.doughOrder
const about = { kind: 'batch', id } as const

function asked(stepId: string, what: 'start' | 'end', log = madeLog(), now = 1000) {
  const effective = effectiveEvents(log.events)
  const runs = stepRuns(session, plan, effective)
  const run = runs.find(({ unit, step }) => unit.id === id && step.id === stepId)
  const at = plan.steps.findIndex((step) => step.id === stepId)
  const step = plan.steps[at]
  if (!step) throw new Error(stepId)
  const item = { unit: about, step, repeat: 1, do: what, handsOn: false }
  return askedReadings({ item, run, next: plan.steps[at + 1] ?? null, events: effective, now })
}

it('asks for each reading where it arises', () => {
  expect(asked('mix', 'end')).toEqual([{ what: 'temperature', of: 'dough' }])
  expect(asked('fold', 'end')).toEqual([{ what: 'folds' }])
  expect(asked('rest', 'end')).toEqual([{ what: 'rise' }, { what: 'photo', of: 'tubs' }])
  expect(asked('bake', 'start')).toEqual([{ what: 'temperature', of: 'oven-floor' }])
  expect(asked('cut', 'end')).toEqual([
    { what: 'temperature', of: 'serving' },
    { what: 'photo', of: 'crumb' },
  ])
  expect(asked('divide', 'end')).toEqual([])
})

it('does not ask again for what was read, and asks for the floor anew before each launch', () => {
  const log = madeLog()
  log.log({ kind: 'step-started', stepId: 'mix', repeat: 1 }, { about, at: 1000 })
  log.log({ kind: 'temperature', of: 'dough', celsius: 24 }, { about, at: 2000 })
  expect(asked('mix', 'end', log)).toEqual([])
  // The floor was read by another dough two minutes ago; three minutes and more is too long.
  log.log({ kind: 'temperature', of: 'oven-floor', celsius: 300 }, { at: 10_000 })
  expect(asked('bake', 'start', log, 130_000)).toEqual([])
  expect(asked('bake', 'start', log, 200_000)).toHaveLength(1)
})

it('asks for the core as a bake ends', () => {
  const log = madeLog()
  log.log({ kind: 'bake-in', stepId: 'bake', repeat: 1 }, { about, at: 1000 })
  expect(asked('bake', 'end', log)).toEqual([{ what: 'temperature', of: 'core' }])
  log.log({ kind: 'temperature', of: 'core', celsius: 97 }, { about, at: 2000 })
  expect(asked('bake', 'end', log)).toEqual([])
})
