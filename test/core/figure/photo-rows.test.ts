import { expect, test } from 'vitest'
import { photoRows, scaleBarMillimetres, shareOfCell } from '@/core/figure/photo-rows.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

const minute = 60_000
const day = wholeTrialOf()
const [session] = day.sessions
const [plan] = day.plans
const doughs = (session?.batches ?? []).filter(({ levelId }) => levelId !== null)
const [one, other] = doughs
const [mix, later] = plan?.steps.filter(({ repeats }) => repeats === 1) ?? []
const [piece] = session?.pieces.filter(({ batchId }) => batchId === one?.id) ?? []
const serving = session?.dealt.servings.find(({ pieceId }) => pieceId === piece?.id)
if (!session || !plan || !one || !other || !mix || !later || !piece || !serving)
  throw new Error('the trial has two doughs, two steps, a piece and its serving')
const start = 1_000_000 * minute

type Part = { kind: 'step-started'; stepId: string; repeat: number } | PhotoPart | { kind: 'void' }
interface PhotoPart {
  kind: 'photo'
  photoId: string
  caption?: string
  widthMillimetres?: number
}
let counted = 0
const at = (
  minutes: number,
  about: { kind: 'batch' | 'piece' | 'serving' | 'session'; id: string },
  part: Part,
  more: Partial<Event> = {},
) => {
  counted += 1
  return {
    ...{ id: `event-${counted}`, trialId: 'trial-1', sessionId: session.id },
    ...{
      device: 'device-1',
      count: counted,
      at: start + minutes * minute,
      zone: 'Europe/Rome',
      about,
    },
    ...part,
    ...more,
  } as Event
}
const dough = (id: string) => ({ kind: 'batch' as const, id })
const began = (minutes: number, id: string, stepId: string) =>
  at(minutes, dough(id), { kind: 'step-started', stepId, repeat: 1 })
const shot = (minutes: number, id: string, photoId: string, widthMillimetres?: number) =>
  at(minutes, dough(id), {
    ...{ kind: 'photo' as const, photoId },
    ...(widthMillimetres === undefined ? {} : { widthMillimetres }),
  })
const rowsOf = (events: Event[]) => photoRows({ ...day, events } as WholeTrial)
const shown = (events: Event[]) =>
  rowsOf(events).map(({ step, cells }) => [
    step?.id ?? null,
    cells.map(({ levelId, photos }) => [levelId, photos.map(({ photoId }) => photoId)]),
  ])

test('photos of one moment stand in one row, the levels in the order of the rail, whatever the order they were taken in', () => {
  const rail = [...plan.levels]
    .toSorted((a, b) => (a.value ?? 0) - (b.value ?? 0))
    .map(({ id }) => id)
  const events = [
    ...[began(0, one.id, mix.id), began(2, other.id, mix.id)],
    ...[shot(3, other.id, 'mixed-other'), shot(4, one.id, 'mixed-one')],
    ...[began(60, one.id, later.id), shot(61, one.id, 'later-one')],
    // The other dough is still at its mix, a minute after the first one went on.
    ...[shot(62, other.id, 'mixed-other-again'), began(63, other.id, later.id)],
    shot(64, other.id, 'later-other'),
  ]
  const sides = (byDough: Record<string, string[]>) =>
    [one, other]
      .toSorted((a, b) => rail.indexOf(a.levelId ?? '') - rail.indexOf(b.levelId ?? ''))
      .map(({ id, levelId }) => [levelId, byDough[id]])
  expect(shown(events)).toEqual([
    [mix.id, sides({ [one.id]: ['mixed-one'], [other.id]: ['mixed-other', 'mixed-other-again'] })],
    [later.id, sides({ [one.id]: ['later-one'], [other.id]: ['later-other'] })],
  ])
})

test('a photo before the first step comes first; that of a piece or its serving stands under the level of the piece', () => {
  const events = [
    shot(0, one.id, 'flour'),
    began(1, one.id, mix.id),
    at(2, { kind: 'piece', id: piece.id }, { kind: 'photo', photoId: 'of-piece' }),
    at(3, { kind: 'serving', id: serving.id }, { kind: 'photo', photoId: 'of-serving' }),
    at(4, { kind: 'session', id: session.id }, { kind: 'photo', photoId: 'of-table' }),
  ]
  expect(shown(events)).toEqual([
    // Nothing of the whole table was begun: its photo has neither step nor level.
    [
      null,
      expect.arrayContaining([
        [one.levelId, ['flour']],
        [null, ['of-table']],
      ]),
    ],
    [mix.id, [[one.levelId, ['of-piece', 'of-serving']]]],
  ])
})

test('a photo that was taken back is gone, and one whose width was said later has it', () => {
  const photo = shot(1, one.id, 'photo-a')
  const gone = shot(2, one.id, 'photo-b')
  const events = [
    ...[began(0, one.id, mix.id), photo, gone],
    at(3, dough(one.id), { kind: 'void' }, { corrects: gone.id }),
    { ...shot(1, one.id, 'photo-a', 120), corrects: photo.id } as Event,
  ]
  const [row] = rowsOf(events)
  expect(row?.cells.flatMap(({ photos }) => photos)).toEqual([
    { photoId: 'photo-a', at: photo.at, caption: '', widthMillimetres: 120 },
  ])
})

test('known widths are drawn at one scale, the widest over its whole cell; an unknown one has no scale', () => {
  const [row] = rowsOf([
    began(0, one.id, mix.id),
    began(0, other.id, mix.id),
    shot(1, one.id, 'wide', 240),
    shot(2, other.id, 'close', 60),
    shot(3, other.id, 'unknown'),
  ])
  const shares = new Map(
    row?.cells.flatMap(({ photos }) =>
      photos.map((photo) => [photo.photoId, shareOfCell(photo, row)] as const),
    ),
  )
  // 60 mm of 240 mm is a quarter: a crumb 10 mm across is drawn alike in both pictures.
  expect(shares).toEqual(
    new Map([
      ['wide', 1],
      ['close', 0.25],
      ['unknown', null],
    ]),
  )
  expect(row?.widestMillimetres).toBe(240)
})

test('the bar is a round length of at most half the widest view', () => {
  // 240 mm: half is 120, so 100; 90: half is 45, so 20; 30: 15, so 10; 8: 4, so 2.
  expect([240, 90, 30, 8].map(scaleBarMillimetres)).toEqual([100, 20, 10, 2])
})
