import type { About, Event } from '@/core/session/event-record.ts'
import { begun, minutes, zone } from './made-up-day.ts'

type Told = Event extends infer Each
  ? Each extends Event
    ? Omit<Each, 'id' | 'trialId' | 'sessionId' | 'device' | 'count' | 'at' | 'zone' | 'about'>
    : never
  : never

const about = (kind: About['kind'], id: string): About => ({ kind, id })
const batch = about('batch', 'batch-1')
const piece = about('piece', 'piece-1')
const session = about('session', 'session-1')

/** One event of every kind, in the order of a day. */
const told: [About, Told][] = [
  [about('trial', 'trial-1'), { kind: 'lock' }],
  [about('step', 'step-mix'), { kind: 'note', text: 'flour felt damp' }],
  [batch, { kind: 'step-started', stepId: 'step-mix', repeat: 1 }],
  [batch, { kind: 'weighed', ingredientId: 'water', prefermentId: 'poolish', grams: 66 }],
  [batch, { kind: 'weighed', ingredientId: 'salt', grams: 6 }],
  [batch, { kind: 'void', corrects: 'event-005' }],
  [batch, { kind: 'weighed', ingredientId: 'water', grams: 155 }],
  [batch, { kind: 'weighed', ingredientId: 'water', grams: 153, corrects: 'event-007' }],
  [batch, { kind: 'step-stopped', stepId: 'step-mix', repeat: 1 }],
  [batch, { kind: 'temperature', of: 'dough', celsius: 24.6 }],
  [batch, { kind: 'worked-in', what: 'dusting-flour', grams: 5 }],
  [batch, { kind: 'rise', percent: 78 }],
  [batch, { kind: 'measured', responseId: 'stickiness', value: 4 }],
  [piece, { kind: 'mass', when: 'in', grams: 249, topped: false }],
  [piece, { kind: 'bake-in' }],
  [piece, { kind: 'bake-out' }],
  [piece, { kind: 'size', what: 'height-out', value: 61 }],
  [piece, { kind: 'photo', photoId: 'photo-1', caption: 'crumb' }],
  [about('piece', 'piece-0'), { kind: 'failure', what: 'torn', note: 'at the peel' }],
  [about('taster', 'taster-1'), { kind: 'present' }],
  [about('taster', 'taster-2'), { kind: 'present' }],
  [about('taster', 'taster-1'), { kind: 'allergens-heard' }],
  [about('serving', 'serving-2'), { kind: 'served' }],
  [about('serving', 'serving-1'), { kind: 'served' }],
  [about('serving', 'serving-1'), { kind: 'peeked', reason: 'allergy asked' }],
  [about('taster', 'taster-2'), { kind: 'declined' }],
  [about('taster', 'taster-2'), { kind: 'left' }],
  [about('taster', 'taster-1'), { kind: 'seat-left' }],
  [session, { kind: 'tasting-closed', reason: 'OK had to go' }],
  [session, { kind: 'unsealed' }],
  [session, { kind: 'findings-looked' }],
  [session, { kind: 'device-taken' }],
]

/** The log of `sessionOf`: one event of every kind at least, five minutes apart. */
export const eventsOf = (): Event[] =>
  told.map(
    ([what, each], index): Event => ({
      ...each,
      id: `event-${String(index + 1).padStart(3, '0')}`,
      trialId: 'trial-1',
      sessionId: 'session-1',
      device: 'device-1',
      count: index + 1,
      at: begun + index * 5 * minutes,
      zone,
      about: what,
    }),
  )
