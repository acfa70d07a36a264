import { expect, test } from 'vitest'
import { nextOnLine } from '@/app/bench/day/next-on-line.ts'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { madePlan, madeStep } from '../../../core/made-plan.ts'
import { madeLog } from '../../../core/session/made-events.ts'
import { madeSession } from '../../../core/session/made-session.ts'

/** What follows the first step of the first dough, each dough giving so many pieces, where this is done next to a piece. */
function afterFirst(flights: number, kind: 'open' | 'bake', waitSeconds = 1800) {
  const plan = madePlan({
    ...{ flights, warmUpPiece: false, responses: [], mainResponseId: null },
    steps: [
      madeStep('proof', 'proof', { handsSeconds: 1800 - waitSeconds, waitSeconds }),
      madeStep(kind, kind, { per: 'piece', waitSeconds: 240, uses: ['hands', 'oven'] }),
    ],
  })
  const session = madeSession(plan)
  const [batchId = ''] = session.dealt.doughOrder
  const { events, log } = madeLog()
  log(
    { kind: 'step-started', stepId: 'proof', repeat: 1 },
    { about: { kind: 'batch', id: batchId } },
  )
  const standing = effectiveEvents(events)
  const item = agenda(session, plan, standing, 1_800_000).find(({ unit }) => unit.id === batchId)
  if (!item) throw new Error('the dough proves')
  const next = nextOnLine(stepRuns(session, plan, standing), item)
  return next && { step: next.step.id, kind: next.unit.kind, batchId: next.batchId === batchId }
}

test('a dough of one piece goes on as that piece, so that one press ends its proof and launches it', () => {
  expect(afterFirst(1, 'open')).toEqual({ step: 'open', kind: 'piece', batchId: true })
  expect(afterFirst(1, 'bake')).toEqual({ step: 'bake', kind: 'piece', batchId: true })
})

test('after work by hand the launch is a press of its own: another device may be at the oven', () => {
  expect(afterFirst(1, 'bake', 0)).toBeNull()
})

test('a dough of two pieces runs apart: nothing follows on its own line', () => {
  expect(afterFirst(2, 'bake')).toBeNull()
})
