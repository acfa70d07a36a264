import { expect, test } from 'vitest'
import { presenceOf } from '@/core/table/presence.ts'

const at = Date.UTC(2026, 4, 9, 14, 2)
const heard = (lastHeardAt: number | null, revoked = false) => ({
  ...{ device: 'EL7K2MQ9', lastHeardAt, revoked },
})

test('a device is here for a minute after its last word, then quiet for whole minutes', () => {
  expect(presenceOf(heard(null), at)).toEqual({ state: 'never' })
  expect(presenceOf(heard(at - 59_000), at)).toEqual({ state: 'here' })
  expect(presenceOf(heard(at - 60_000), at)).toEqual({ state: 'quiet', minutes: 1 })
  expect(presenceOf(heard(at - 239_000), at)).toEqual({ state: 'quiet', minutes: 3 })
})

test('a clock set back makes nobody quiet, and a revoked device is told as such', () => {
  expect(presenceOf(heard(at + 5000), at)).toEqual({ state: 'here' })
  expect(presenceOf(heard(at, true), at)).toEqual({ state: 'revoked' })
})
