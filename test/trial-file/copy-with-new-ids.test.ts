import { describe, expect, test } from 'vitest'
import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import { copyWithNewIds } from '@/trial-file/copy-with-new-ids.ts'
import { lastMoment, shiftStamps } from '@/trial-file/shift-stamps.ts'
import { begun } from '../trial-of/made-up-day.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

const counting = () => {
  let last = 0
  return () => `new-${++last}`
}

/** Every text and number in a document with the path to it. */
function leaves(value: unknown, path = ''): [string, unknown][] {
  if (value === null || typeof value !== 'object') return [[path, value]]
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, `${path}/${key}`))
}

/** Where the fixture holds an id, read off by eye: keys named id or ending in Id, and these lists and links. */
const isIdPath = (path: string) =>
  /\/(id|[a-zA-Z]+Id|device|corrects|replaces)$/.test(path) ||
  /\/([a-z]+Ids|doughOrder|kitchenIds)\/\d+$/.test(path)

describe('a copy under new ids', () => {
  const whole = wholeTrialOf()
  const copy = copyWithNewIds(whole, counting())
  const before = leaves(whole)
  const after = new Map(leaves(copy))
  const outside = '/trial/follows/trialId'

  test('F16: every id is replaced, everything else stays, and the trial it follows keeps its name', () => {
    expect(after.size).toBe(before.length)
    for (const [path, value] of before) {
      if (isIdPath(path) && path !== outside && value !== null)
        expect(after.get(path), path).toMatch(/^new-\d+$/)
      else expect(after.get(path), path).toEqual(value)
    }
  })

  test('F16: the same old id is the same new id everywhere, and different ones stay different', () => {
    const pairs = before
      .filter(([path, value]) => isIdPath(path) && path !== outside && value !== null)
      .map(([path, value]) => [value, after.get(path)])
    const forward = new Map(pairs.map(([old, fresh]) => [old, fresh]))
    for (const [old, fresh] of pairs) expect(forward.get(old)).toBe(fresh)
    expect(new Set(forward.values()).size).toBe(forward.size)
    expect(referenceTroubles(copy)).toEqual([])
  })

  test('F16: ids that are to be kept are kept wherever they stand', () => {
    const kept = copyWithNewIds(whole, counting(), new Set(['taster-1', 'oven-1']))
    expect(kept.kitchen.find((thing) => thing.id === 'taster-1')).toEqual(
      whole.kitchen.find((thing) => thing.id === 'taster-1'),
    )
    expect(kept.ballots.every((ballot) => ballot.tasterId === 'taster-1')).toBe(true)
    expect(kept.plans[0]?.tasters[1]?.tasterId).toMatch(/^new-/)
  })

  test('F16: what was copied stays untouched', () => {
    expect(whole).toEqual(wholeTrialOf())
  })
})

describe('shifting the stamps', () => {
  test('F17: every moment moves by the same time and nothing else moves', () => {
    const whole = wholeTrialOf()
    const erased = { id: 'taster-3', kind: 'taster' as const, initials: '', erasedAt: begun }
    whole.kitchen.push(erased)
    const moved = new Map(leaves(shiftStamps(whole, 86_400_000)))
    for (const [path, value] of leaves(whole)) {
      const isMoment = /\/(at|createdAt|startedAt)$/.test(path) && !path.includes('anchors')
      if (isMoment && typeof value === 'number' && value > 1e9)
        expect(moved.get(path), path).toBe(value + 86_400_000)
      else expect(moved.get(path), path).toEqual(value)
    }
  })

  test('F17: the last moment is the last thing logged or scored', () => {
    // The fixture's last event is its 32nd, 31 x 5 minutes after the start; its last ballot 115 minutes after.
    expect(lastMoment(wholeTrialOf())).toBe(begun + 155 * 60_000)
    expect(lastMoment({ ...wholeTrialOf(), events: [], ballots: [] })).toBe(begun - 600 * 60_000)
  })
})
