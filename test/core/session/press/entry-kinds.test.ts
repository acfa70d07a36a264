import { expect, test } from 'vitest'
import { entryKeys, type FrontState, keysInFront } from '@/core/session/press/entry-kinds.ts'

const front = (state: Partial<FrontState>): FrontState => ({
  ...{ unit: 'batch', step: 'mix', toWeigh: 5, weighed: 5, divided: false, asked: true },
  ...state,
})

test('before anything is weighed, weighing comes first; once all is weighed it steps back', () => {
  expect(entryKeys(front({ weighed: 0 }))[0]).toBe('weigh')
  expect(entryKeys(front({ weighed: 4 }))[0]).toBe('weigh')
  expect(entryKeys(front({})).slice(0, keysInFront)).not.toContain('weigh')
  expect(entryKeys(front({}))).toContain('weigh')
})

test('pieces are offered once there are any, and a piece is not weighed by the sheet', () => {
  expect(entryKeys(front({}))).not.toContain('pieces')
  expect(entryKeys(front({ divided: true }))).toContain('pieces')
  const piece = entryKeys(front({ unit: 'piece', step: 'bake' }))
  expect(piece.slice(0, keysInFront)).toContain('pieces')
  expect(piece).not.toContain('weigh')
})

test('rise stands in front while something rises; handling only when the plan asks', () => {
  expect(entryKeys(front({ step: 'proof' })).slice(0, 2)).toEqual(['temperature', 'rise'])
  expect(entryKeys(front({ asked: false }))).not.toContain('answers')
})

test('no entry is offered twice', () => {
  for (const step of ['mix', 'proof', 'divide', 'bake', null] as const)
    for (const divided of [false, true])
      for (const weighed of [0, 5]) {
        const keys = entryKeys(front({ step, divided, weighed }))
        expect(new Set(keys).size).toBe(keys.length)
      }
})
