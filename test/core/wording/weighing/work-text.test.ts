import { expect, test } from 'vitest'
import { workText } from '@/core/wording/weighing/work-text.ts'

test('a step says its work and its wait, and only what it has of both', () => {
  expect(workText({ kind: 'mix', handsSeconds: 600, waitSeconds: 1800 })).toBe(
    'about 10 min of work, then 30 min of waiting',
  )
  expect(workText({ kind: 'mix', handsSeconds: 600, waitSeconds: 0 })).toBe('about 10 min of work')
  expect(workText({ kind: 'rest', handsSeconds: 0, waitSeconds: 1800 })).toBe('30 min of waiting')
  expect(workText({ kind: 'bake', handsSeconds: 60, waitSeconds: 480 })).toBe(
    'about 1 min of work, 8 min in the oven',
  )
  expect(workText({ kind: 'cut', handsSeconds: 0, waitSeconds: 0 })).toBe('')
})
