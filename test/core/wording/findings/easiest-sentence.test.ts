import { expect, test } from 'vitest'
import { easiestSentence } from '@/core/wording/findings/easiest-sentence.ts'
import { bakeClubScores } from '../../report/bake-club-scores.ts'

const { factor } = bakeClubScores()
const easiest = { level: 70, against: 74, lowerLimit: -0.98, passes: [70, 74] }
/** With plain blanks for the ones that keep a number to its unit. */
const said = (...asked: Parameters<typeof easiestSentence>) =>
  easiestSentence(...asked).replaceAll('\u00a0', ' ')
const ease = (level: number, handsSeconds: number) => ({
  ...{ level, handsSeconds, failures: 0, pieces: 3, handling: null },
})

test('what the easiest level spares stands apart from what it is measured against', () => {
  const bare = said(easiest, { factor, ease: null })
  expect(bare).toBe('70 % is no more than 0.98 below the best liked, 74 %.')
  // 600 − 300 s spared are 5 min.
  expect(said(easiest, { factor, ease: [ease(70, 300), ease(74, 600)] })).toBe(
    '70 % is no more than 0.98 below the best liked, 74 %; it never failed and took 5 min less of your hands.',
  )
})
