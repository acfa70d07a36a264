import type { Event } from '@/core/session/event-record.ts'
import type { Unit } from '@/core/session/line.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Step } from '@/core/trial/step.ts'
import { madePlan } from '../../made-plan.ts'
import { madeLog } from '../made-events.ts'
import { madeSession } from '../made-session.ts'

/** A plan whose method is one fold, as given, so many times. */
export function withSteps(
  step: Pick<Step, 'handsSeconds' | 'waitSeconds' | 'earlySeconds' | 'lateSeconds' | 'once'>,
  repeats = 1,
): Plan {
  const fold: Step = {
    ...{ id: 'fold', kind: 'fold', name: 'Fold', per: 'batch', repeats, endsBy: { by: 'clock' } },
    ...{ uses: ['hands'], ...step },
  }
  return madePlan({ steps: [fold] })
}

type StepEvent = 'step-started' | 'hands-off' | 'step-stopped' | 'step-skipped'

/** A session of that plan with its first two doughs, and a log to press into. */
export function made(plan: Plan) {
  const session = madeSession(plan)
  const [one = '', two = ''] = session.dealt.doughOrder
  const { events, log } = madeLog(session.id)
  const press = (at: number, { kind, about }: { kind: StepEvent; about: Unit }): Event =>
    log({ kind, stepId: 'fold', repeat: 1 }, { about, at })
  const first: Unit = { kind: 'batch', id: one }
  const second: Unit = { kind: 'batch', id: two }
  return { session, events, press, first, second }
}
