import { expect, test } from 'vitest'
import { tableFindings } from '@/core/findings/at-table/table-findings.ts'
import type { Session } from '@/core/session/session-record.ts'
import { tasterOrder } from '@/core/tasting/taster-order.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tableSentences } from '@/core/wording/findings/table-sentences.ts'
import { madePlan } from '../../made-plan.ts'
import { madeSession } from '../../session/made-session.ts'
import { answers, madeTasting } from '../../tasting/made-tasting.ts'

const people = ['ta-1', 'ta-2', 'ta-3', 'ta-4']
const plan = madePlan({
  serving: 'rested',
  flights: 1,
  atTable: { again: ['lv-mid'], asksUsual: true },
  tasters: people.map((tasterId) => ({ tasterId, knows: tasterId === 'ta-4' })),
})
const session = madeSession(plan)
const nameOf = (id: string) => id.toUpperCase()

const levelOf = (session: Session, pieceId: string) =>
  session.pieces.find(({ id }) => id === pieceId)?.levelId

/** Every taster scores by level and, the second time, so much apart; what comes first gets `first` more. */
function tasted(
  apart: Record<string, number>,
  first: number,
  guesses: Record<string, string | null>,
) {
  const { records, seal, log } = madeTasting(plan, [session])
  const worth: Record<string, number> = { 'lv-low': 4, 'lv-mid': 5, 'lv-high': 6, 'lv-top': 5 }
  const usual = session.dealt.servings.filter(
    ({ pieceId }) => levelOf(session, pieceId) === 'lv-mid',
  )
  for (const id of people) {
    for (const [at, serving] of tasterOrder(session, id).entries()) {
      const again = serving.repeats === undefined ? 0 : (apart[id] ?? 0)
      const own = worth[levelOf(session, serving.pieceId) ?? ''] ?? 0
      // A small wobble of its own, so that no spread is nothing.
      const wobble = at % 2 === 0 ? 0 : 0.2
      seal(
        id,
        { kind: 'serving', id: serving.id },
        {
          answers: answers(
            own + again + (at === 0 ? first : 0) + (serving.repeats ? 0 : wobble),
            3,
          ),
        },
      )
    }
    const guess = guesses[id]
    const code = guess === 'usual' ? usual[0]?.code : guess === 'other' ? '100' : undefined
    if (guess !== undefined)
      seal(
        id,
        { kind: 'session', id: 'session-a' },
        {
          answers: [],
          ...(code === undefined ? {} : { pickedCode: code }),
        },
      )
  }
  log({ kind: 'unsealed' }, { about: { kind: 'session', id: 'session-a' } })
  const whole = { ...records, trial: { planId: plan.id }, photos: [], kitchen: [] }
  return tableFindings(whole as unknown as WholeTrial, { unsealed: false })
}

test('a hidden duplicate tells how each taster repeats: √(Σd²/2n)', () => {
  const found = tasted({ 'ta-1': 1, 'ta-2': -2 }, 0, {})
  if (!found.ok) throw new Error(found.reason)
  const of = (id: string) => found.repeats.find(({ tasterId }) => tasterId === id)
  // One pair each; the first scoring carries a wobble of 0 or 0.2, so d is 1 or 0.8, and −2 or −2.2; sd = |d| / √2.
  for (const [id, sizes] of [
    ['ta-1', [1, 0.8]],
    ['ta-2', [2, 2.2]],
  ] as const) {
    const sds = sizes.map((size) => (size / Math.SQRT2).toFixed(6))
    expect(of(id)?.pairs).toBe(1)
    expect(sds).toContain(of(id)?.sd.toFixed(6))
  }
})

test('three of three blind guesses by luck of two codes in five: 0.4³ = 0.064; who knows and “no idea” are no guess', () => {
  const found = tasted({}, 0, { 'ta-1': 'usual', 'ta-2': 'usual', 'ta-3': null, 'ta-4': 'usual' })
  if (!found.ok) throw new Error(found.reason)
  expect(found.blinding).toMatchObject({ asked: 3, guessed: 2, found: 2, chance: 0.4 })
  expect(found.blinding?.p).toBeCloseTo(0.16, 10)
  const all = tasted({}, 0, { 'ta-1': 'usual', 'ta-2': 'usual', 'ta-3': 'usual' })
  expect(all.ok && all.blinding?.p).toBeCloseTo(0.064, 10)
})

test('who knows is named, nobody is dropped, and each sentence says what it rests on', () => {
  const found = tasted({ 'ta-2': 4 }, 0, { 'ta-1': 'other', 'ta-2': null })
  if (!found.ok) throw new Error(found.reason)
  expect(found.knowing).toEqual(['ta-4'])
  const text = tableSentences(found, nameOf).join(' ')
  expect(text).toContain('TA-2 varies widely')
  expect(text).toContain('and stay in.')
  expect(text).toContain('None of one guess found the usual one')
  expect(text).toContain('TA-4 knows which is which')
  expect(text).not.toMatch(/NaN|undefined/)
})
