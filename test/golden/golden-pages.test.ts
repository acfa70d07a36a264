import { expect, test } from 'vitest'
import { evidencePage } from '../core/findings/evidence-page.ts'
import { goldenTrials, scoresOf } from './golden-trials.ts'

/**
 * Pages of made trials, kept as they read: whoever changes a rule or a word sees here what a baker will read. They prove no number; the
 * numbers are checked elsewhere. Read them as a baker and as a statistician before renewing them (`vitest -u`).
 */
test.each(goldenTrials)('$name', async (one) => {
  const page = evidencePage(scoresOf(one))
  const { levels, tasters, sessions, shape, size } = one
  const made = `${levels} levels, ${tasters} tasters, ${sessions} sessions; made: ${shape} ${size}`
  const lines = [
    `${one.name} (${made})`,
    '',
    page.headline,
    '',
    `Expected: ${page.expectation}`,
    `Where the best lies: ${page.place}`,
    `The ending: ${page.ending}`,
    ...page.next.map((next) => `Next: ${next}`),
    ...page.ladder,
    page.hangs,
    page.freshness,
    '',
  ]
  const slug = one.name.replace(/[^a-z0-9]+/gi, '-')
  await expect(lines.join('\n')).toMatchFileSnapshot(`./pages/${slug}.txt`)
})
