import { expect, test } from 'vitest'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

const whole = wholeTrialOf()
const [session] = whole.sessions
const about = { kind: 'trial', id: 'trial-1' } as const
const stamp = { trialId: 'trial-1', device: 'device-1', zone: 'Europe/Rome', at: 0, about }
const unsealed = (count: number, sessionId: string) =>
  ({ ...stamp, id: `u${count}`, count, sessionId, kind: 'unsealed' }) as const
const looked = (count: number) =>
  ({ ...stamp, id: `l${count}`, count, sessionId: null, kind: 'findings-looked' }) as const
if (!session) throw new Error('the trial has a session')
const two = [session, { ...session, id: 'session-2', number: 2 }]

test('one of two planned sessions unsealed: the first look is said, once', () => {
  const first = unsealed(1, session.id)
  expect(mustSayLook({ sessions: [session], events: [first] })).toBe(true)
  expect(mustSayLook({ sessions: [session], events: [first, looked(2)] })).toBe(false)
})

test('after another unsealing it has to be said again, while sessions are still to come', () => {
  const three = two.map((each) => ({ ...each, plannedSessions: 3 }))
  const events = [unsealed(1, session.id), looked(2), unsealed(3, 'session-2')]
  expect(mustSayLook({ sessions: three, events })).toBe(true)
})

test('when all planned sessions are unsealed nothing has to be said', () => {
  const events = [unsealed(1, session.id), unsealed(2, 'session-2')]
  expect(mustSayLook({ sessions: two, events })).toBe(false)
})
