import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { eventsOf } from './trial-of/events-of.ts'
import { kitchenOf } from './trial-of/kitchen-of.ts'
import { begun, minutes, zone } from './trial-of/made-up-day.ts'
import { planOf } from './trial-of/plan-of.ts'
import { sessionOf } from './trial-of/session-of.ts'

const ballotOf = (number: number, servingId: string, liking: number | null): Ballot => ({
  id: `ballot-${number}`,
  trialId: 'trial-1',
  sessionId: 'session-1',
  tasterId: 'taster-1',
  device: 'device-1',
  count: 100 + number,
  at: begun + (111 + number) * minutes,
  startedAt: begun + (110 + number) * minutes,
  about: { kind: 'serving', id: servingId },
  answers: [
    {
      responseId: 'liking',
      value: liking,
      ...(liking === null ? { why: 'the piece ran out' } : {}),
    },
    { responseId: 'chew', value: 3 },
  ],
})

/**
 * A whole trial with every kind of record and of event in it, valid in shape and reference, made anew at each call. Its
 * one session of two planned is unsealed. Ids are readable; the lists stand in canonical order, rising by id.
 */
export function wholeTrialOf(): WholeTrial {
  const ballots = [
    ballotOf(1, 'serving-2', 7),
    ballotOf(2, 'serving-1', 6),
    { ...ballotOf(3, 'serving-1', null), replaces: 'ballot-2' },
    {
      ...ballotOf(4, 'serving-1', 5),
      about: { kind: 'set' as const, id: 'set-1' },
      answers: [],
      pickedCode: '683',
    },
  ]
  return structuredClone({
    trial: {
      id: 'trial-1',
      createdAt: begun - 600 * minutes,
      zone,
      planId: 'plan-1',
      seed: 4_000_000_000,
      revision: 40,
      note: 'all data invented',
      follows: { trialId: 'trial-0', how: 'narrows' },
    },
    plans: [planOf()],
    sessions: [sessionOf()],
    events: eventsOf(),
    ballots,
    photos: [
      {
        id: 'photo-1',
        trialId: 'trial-1',
        at: begun + 85 * minutes,
        mediaType: 'image/jpeg',
        widthPixels: 640,
        heightPixels: 480,
      },
    ],
    kitchen: kitchenOf(),
  })
}
