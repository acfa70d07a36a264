import { expect, test } from 'vitest'
import { photosByLevel } from '@/app/findings/parts/photos-of.ts'
import { sessionOf } from '../../../trial-of/session-of.ts'

const session = sessionOf()
const [batch, other] = session.batches
const piece = session.pieces.find(({ batchId }) => batchId === batch?.id)
const serving = session.dealt.servings.find(({ pieceId }) => pieceId === piece?.id)
if (!batch || !other || !piece || !serving)
  throw new Error('the session has two batches, a piece and its serving')

const photo = (
  count: number,
  about: { kind: 'batch' | 'piece' | 'serving' | 'session'; id: string },
) =>
  ({
    id: `event-${count}`,
    trialId: session.trialId,
    sessionId: session.id,
    device: 'device-1',
    count,
    at: count,
    zone: 'Europe/Rome',
    kind: 'photo',
    about,
    photoId: `photo-${count}`,
  }) as const

test('photos of a dough, its pieces and their servings stand under its level, in the order they were taken', () => {
  const found = photosByLevel({
    sessions: [session],
    events: [
      photo(1, { kind: 'batch', id: batch.id }),
      photo(2, { kind: 'batch', id: other.id }),
      photo(3, { kind: 'piece', id: piece.id }),
      photo(4, { kind: 'serving', id: serving.id }),
    ],
  })
  expect(found.get(piece.levelId)?.map(({ photoId }) => photoId)).toEqual([
    'photo-1',
    'photo-3',
    'photo-4',
  ])
  expect(found.get(other.levelId ?? '')?.map(({ photoId }) => photoId)).toEqual(['photo-2'])
})

test('a photo of the whole session has no level, and one taken back is gone', () => {
  const events = [
    photo(1, { kind: 'session', id: session.id }),
    photo(2, { kind: 'batch', id: batch.id }),
    { ...photo(3, { kind: 'batch', id: batch.id }), kind: 'void' as const, corrects: 'event-2' },
  ].map((event) => {
    if (event.kind !== 'void') return event
    const { photoId: _, ...rest } = event
    return rest
  })
  expect(photosByLevel({ sessions: [session], events }).size).toBe(0)
})
