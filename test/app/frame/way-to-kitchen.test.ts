import { expect, test } from 'vitest'
import { wayToKitchen } from '@/app/frame/place-names.ts'

test.each([
  ['/', '/kitchen'],
  ['/new', '/kitchen'],
  ['/house/one', '/kitchen'],
  ['/trial/one/plan', '/kitchen/one/plan'],
  ['/trial/one/plan/clock', '/kitchen/one/plan'],
  ['/trial/one/findings', '/kitchen/one/findings'],
  ['/trial/one/nowhere', '/kitchen'],
  ['/kitchen/one/bench', '/kitchen/one/bench'],
  ['/kitchen', '/kitchen'],
])('from %s the kitchen lies at %s', (location, way) => {
  expect(wayToKitchen(location)).toBe(way)
})
