import { expect, test } from 'vitest'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { evidencePage } from './evidence-page.ts'
import { sampleTrial } from './sample-trial.ts'

/** The focaccia's page with the margin of its main response, and the level that was hoped to do as well. */
function focacciaPage(margin: number, hoped: number | null) {
  const whole = sampleTrial('focaccia-hydration')
  const plans = whole.plans.map((plan) => ({
    ...plan,
    responses: plan.responses.map((response) =>
      response.id === plan.mainResponseId ? { ...response, margin } : response,
    ),
    writtenFirst: {
      hopedLevelId: plan.levels.find(({ value }) => value === hoped)?.id ?? null,
      mostSessions: null,
      looks: false,
      againstUsual: false,
    },
  }))
  const read = scoresOfTrial({ ...whole, plans }, { unsealed: true })
  if (!read.ok) throw new Error(read.reason)
  return evidencePage(read.scores)
}

// By hand from the level means, 5.292, 6.667, 7.458, 6.708, 5.125: 70 % is 0.79 below 74 %. Its one-sided 95 % bound, 1.39 below, lies
// within 1.5; among all levels the bound is 1.57 below, and does not.
test('within 1.5 points 70 % is as good as the best where it was named before the mix', () => {
  const page = focacciaPage(1.5, 70)
  expect(page.ending).toMatch(
    /^Adopt 70 %: it was named before the mix and is as good as the best, 74 %, within your margin of 1\.5/,
  )
  expect(page.costs).toMatch(/^70 % is as good as the best within your margin of 1\.5\./)
  expect(page.next[0]).toMatch(/^Adopt 70 %/)
})

test('not named, 70 % is not said to do as well: 74 % stands highest and alone', () => {
  const page = focacciaPage(1.5, null)
  expect(page.ending).toMatch(
    /^Adopt 74 %: it stands highest, and no other level is shown to be as good/,
  )
  expect(page.next[0]).toMatch(/^Adopt 74 %/)
  expect(Object.values(page).flat().join('\n')).not.toContain('Adopt 70 %')
})

test('a level that was named and is not shown leaves nothing said of the others', () => {
  const page = focacciaPage(1, 70)
  expect(page.ending).toMatch(
    /^The level named before the mix is not shown to be as good as the best within your margin of 1\./,
  )
  expect(page.costs).toMatch(
    /^70 %, named before the mix, is not shown to be as good as the best within your margin of 1; of the others it was not asked\./,
  )
  expect(page.next[0]).not.toContain('Adopt')
})

test('the guess stands against the best in one sentence that does not sound like a contradiction', () => {
  expect(focacciaPage(1, null).expectation).toBe(
    'You expected the best to lie in between; that was borne out, though below your guess of 77 %.',
  )
})
