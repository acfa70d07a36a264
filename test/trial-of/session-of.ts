import type { Session } from '@/core/session/session-record.ts'
import { begun, zone } from './made-up-day.ts'

/** One session of `planOf`, dealt: a warm-up piece, one flight, two loads, a tell-apart set. */
export const sessionOf = (): Session => ({
  id: 'session-1',
  trialId: 'trial-1',
  planId: 'plan-1',
  number: 1,
  createdAt: begun,
  zone,
  plannedSessions: 2,
  batches: [
    { id: 'batch-1', letter: 'K', levelId: 'level-1' },
    { id: 'batch-2', letter: 'D', levelId: 'level-2' },
  ],
  pieces: [
    {
      id: 'piece-0',
      batchId: 'batch-1',
      levelId: 'level-1',
      flightId: null,
      role: 'warm-up',
    },
    {
      id: 'piece-1',
      batchId: 'batch-1',
      levelId: 'level-1',
      flightId: 'flight-1',
      role: 'counted',
    },
    {
      id: 'piece-2',
      batchId: 'batch-2',
      levelId: 'level-2',
      flightId: 'flight-1',
      role: 'counted',
    },
  ],
  dealt: {
    seed: 20260502,
    drawVersion: 1,
    letters: [
      { levelId: 'level-1', letter: 'K' },
      { levelId: 'level-2', letter: 'D' },
    ],
    doughOrder: ['batch-2', 'batch-1'],
    reversed: false,
    flights: [{ id: 'flight-1', number: 1, pieceIds: ['piece-2', 'piece-1'] }],
    loads: [
      { id: 'load-1', number: 1, pieceIds: ['piece-0'] },
      { id: 'load-2', number: 2, pieceIds: ['piece-2', 'piece-1'] },
    ],
    servings: [
      { id: 'serving-0', code: '318', pieceId: 'piece-0', flightId: null },
      { id: 'serving-1', code: '472', pieceId: 'piece-1', flightId: 'flight-1' },
      { id: 'serving-2', code: '905', pieceId: 'piece-2', flightId: 'flight-1' },
    ],
    tasterOrders: [
      { tasterId: 'taster-1', servingIds: ['serving-2', 'serving-1'] },
      { tasterId: 'taster-2', servingIds: ['serving-2', 'serving-1'] },
    ],
    sets: [
      {
        id: 'set-1',
        tasterId: 'taster-1',
        samples: [
          { code: '156', levelId: 'level-1' },
          { code: '683', levelId: 'level-2' },
        ],
        answerCode: '683',
      },
    ],
  },
})
