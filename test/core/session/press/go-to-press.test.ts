import { expect, it } from 'vitest'
import { agenda } from '@/core/session/agenda.ts'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import { goToPress } from '@/core/session/press/go-to-press.ts'
import { stepRuns } from '@/core/session/step-runs.ts'
import { made, withSteps } from './one-fold.ts'

const minute = 60_000
const plan = withSteps(
  { handsSeconds: 120, waitSeconds: 1800, earlySeconds: 120, lateSeconds: 120 },
  2,
)

it('ends the work in front and begins that of the dough whose wait is over, in one press', () => {
  const { session, events, press, first, second } = made(plan)
  press(0, { kind: 'step-started', about: second })
  press(2 * minute, { kind: 'hands-off', about: second })
  press(31 * minute, { kind: 'step-started', about: first })
  const at = (now: number) => {
    const effective = effectiveEvents(events)
    const items = agenda(session, plan, effective, now)
    const front = items.find(({ unit }) => unit.id === first.id)
    if (!front) throw new Error('the first dough is worked')
    const others = items.filter(({ unit }) => unit.id === second.id)
    return goToPress(session, front, others, stepRuns(session, plan, effective), effective)
  }
  // The second is due at 32 min: not yet a minute before that.
  expect(at(30.5 * minute)).toBeNull()
  expect(at(33 * minute)?.press).toEqual([
    { kind: 'hands-off', about: first, stepId: 'fold', repeat: 1 },
    { kind: 'step-stopped', about: second, stepId: 'fold', repeat: 1 },
    { kind: 'step-started', about: second, stepId: 'fold', repeat: 2 },
  ])
  press(33 * minute, { kind: 'hands-off', about: first })
  expect(at(33 * minute)).toBeNull()
})
