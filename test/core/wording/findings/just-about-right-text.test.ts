import { expect, test } from 'vitest'
import { justAboutRightText } from '@/core/wording/findings/just-about-right-text.ts'

const none = { reason: 'group-too-small' } as const

test('shares in whole percent, the cost of a side with its interval, and why a side has none', () => {
  const text = justAboutRightText(
    {
      responseId: 'saltiness',
      below: 0.12,
      right: 0.6,
      above: 0.28,
      drops: [
        { side: 'below', n: 3, tasters: 2, drop: none, low: none, high: none },
        { side: 'above', n: 11, tasters: 6, drop: 1.26, low: 0.48, high: 2.04 },
      ],
    },
    'Saltiness',
    'Liking',
  )
  expect(text).toBe(
    'Saltiness: 60 % just about right, 12 % too little, 28 % too much. Called too little: Too few answers: a fifth of all, five servings and four tasters are needed. Called too much: liking was 1.26 lower than where it was just about right (0.48 to 2.04), from 11 answers of six tasters.',
  )
})

test('a side that was liked more says higher, its interval turned round', () => {
  const text = justAboutRightText(
    {
      responseId: 'saltiness',
      below: 0,
      right: 0.5,
      above: 0.5,
      drops: [{ side: 'above', n: 8, tasters: 4, drop: -0.6, low: -1.8, high: 0.6 }],
    },
    'Saltiness',
    'Liking',
  )
  expect(text).toContain('0.6 higher')
  expect(text).toContain('(−0.6 to 1.8)')
})
