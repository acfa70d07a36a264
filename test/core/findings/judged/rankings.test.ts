import { describe, expect, test } from 'vitest'
import { foundRankings } from '@/core/findings/judged/found-rankings.ts'
import { rankingsOfTrial } from '@/core/findings/judged/rankings-of-trial.ts'
import { levelsOfTrial } from '@/core/findings/table/levels-of-trial.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Session } from '@/core/session/session-record.ts'
import { rankingFigures, rankingSentence } from '@/core/wording/findings/ranking-sentence.ts'
import { madePlan } from '../../made-plan.ts'
import { madeSession } from '../../session/made-session.ts'
import { madeTasting } from '../../tasting/made-tasting.ts'

const ids = ['lv-low', 'lv-mid', 'lv-high']

/** Three levels, so many tasters, each with an order of the levels; those of one place share a text, `lv-low=lv-mid`. */
function ranked(orders: readonly string[], change: { knows?: number; again?: string[] } = {}) {
  const base = madePlan()
  const plan = madePlan({
    serving: 'rested',
    flights: 1,
    levels: base.levels.slice(0, 3),
    tasters: orders.map((_, at) => ({ tasterId: `ta-${at + 1}`, knows: at === change.knows })),
    atTable: { ranking: { ties: true }, ...(change.again ? { again: change.again } : {}) },
  })
  const session = madeSession(plan)
  const { records, seal } = madeTasting(plan, [session])
  for (const [at, order] of orders.entries())
    seal(
      `ta-${at + 1}`,
      { kind: 'ranking', id: 'session-a' },
      {
        answers: [],
        ranked: order.split(' ').map((place) => place.split('=').flatMap(codesOf(session))),
      },
    )
  return { records, plan, session, seal }
}

const codesOf = (session: Session) => (levelId: string) =>
  session.dealt.servings
    .filter(({ pieceId }) => session.pieces.find(({ id }) => id === pieceId)?.levelId === levelId)
    .map(({ code }) => code)

function foundIn({ records, plan }: ReturnType<typeof ranked>) {
  const whole = { ...records, trial: {}, kitchen: [], photos: [] } as never
  const levels = levelsOfTrial(whole, plan)
  const factor = { kind: 'hydration', name: 'Hydration', unitOfMeasure: '%', ordered: true }
  const scores = { levels: levels.list, factor, rankings: rankingsOfTrial(whole, levels) }
  return { scores, found: foundRankings(scores as unknown as ScoreTable) }
}

// Worked data: ranks of three treatments by 18 judges, one tie (example of the NAG library's routine g08aec, seen). Rank sums
// 39.5, 42.5 and 26; Friedman with ties 8.7042, p 0.0129 (textbook formulas, worked apart from this program).
const judged = {
  'lv-low': [1, 2, 1, 1, 3, 2, 3, 1, 3, 3, 2, 2, 3, 2, 2.5, 3, 3, 2],
  'lv-mid': [3, 3, 3, 2, 1, 3, 2, 3, 1, 1, 3, 3, 2, 3, 2.5, 2, 2, 3],
  'lv-high': [2, 1, 2, 3, 2, 1, 1, 2, 2, 2, 1, 1, 1, 1, 1, 1, 1, 1],
}
const orders = judged['lv-low'].map((_, judge) =>
  [1, 2, 2.5, 3]
    .map((place) =>
      ids.filter((id) => judged[id as keyof typeof judged][judge] === place).join('='),
    )
    .filter(Boolean)
    .join(' '),
)

describe('what orders show', () => {
  test('is Friedman’s test with ties, a block a taster, in a baker’s words', () => {
    const made = foundIn(ranked(orders))
    const [found] = made.found
    if (!found || 'reason' in found.ranks) throw new Error('a test was made')
    expect(found).toMatchObject({ orders: 18, tasters: 18, sessions: 1, leftOut: 0, knowing: 0 })
    expect(found.ranks.rankSums.map(({ sum }) => sum)).toEqual([39.5, 42.5, 26])
    expect(found.ranks.chiSquare).toBeCloseTo(8.7042, 4)
    expect(found.ranks.p).toBeCloseTo(0.0129, 4)
    const sentence = rankingSentence(found, made.scores as never)
    expect(sentence).toContain(
      'on the mean of 18 tasters 66.4 % (1.4) stands first, then 57 % (2.2) and 61.5 % (2.4)',
    )
    // 1.96·√(18·3·4/6) = 11.76 (ISO 8587), a little less for the tie: 42.5 − 26 and 39.5 − 26 are more, 3 is not.
    expect(sentence).toContain('It sets apart 57 % from 66.4 % and 61.5 % from 66.4 %.')
    expect(sentence).toContain('It speaks of these pieces, and not yet of the levels.')
    expect(rankingFigures(found, made.scores as never)[0]).toContain('chi-square 8.70')
  })

  test('one taster’s order is told and settles nothing', () => {
    const made = foundIn(ranked(['lv-low lv-mid lv-high']))
    const [found] = made.found
    expect(found?.ranks).toMatchObject({ reason: 'needs-two-tasters' })
    if (!found) throw new Error('an order was found')
    expect(rankingSentence(found, made.scores as never)).toContain('57 % (1.0) stands first')
  })

  test('leaves out who knew, and who lacked a level, and says so', () => {
    const made = foundIn(
      ranked(
        [
          'lv-low lv-mid lv-high',
          'lv-low lv-mid lv-high',
          'lv-mid lv-low',
          'lv-high lv-mid lv-low',
        ],
        {
          knows: 3,
        },
      ),
    )
    const [found] = made.found
    expect(found).toMatchObject({ orders: 2, tasters: 2, leftOut: 1, knowing: 1 })
    if (!found) throw new Error('orders were found')
    const sentence = rankingSentence(found, made.scores as never)
    expect(sentence).toContain('One order left out, since not every level was in it.')
    expect(sentence).toContain('One order left out of who knew which was which.')
  })

  test('a level served twice stands at the mean of its places, and levels count from 1', () => {
    const plain = ranked([], { again: ['lv-mid'] })
    const { session, records } = ranked(['lv-low lv-mid lv-high'], { again: ['lv-mid'] })
    const [one = '', other = ''] = codesOf(session)('lv-mid')
    const [low = ''] = codesOf(session)('lv-low')
    const [high = ''] = codesOf(session)('lv-high')
    const [ballot] = records.ballots
    if (!ballot) throw new Error('a ballot was sealed')
    // By hand: its places are 1 and 4, mean 2.5; low 2, high 3: ranks 1, 2, 3 for low, mid, high.
    ballot.ranked = [[one], [low], [high], [other]]
    const { scores } = foundIn({ ...plain, records, session })
    expect(scores.rankings[0]?.orders[0]?.ranks).toEqual([1, 2, 3])
  })

  test('a late order and one that was voided are in no finding', () => {
    const made = ranked(['lv-low lv-mid lv-high', 'lv-low lv-mid lv-high'])
    const [first, second] = made.records.ballots
    if (!first || !second) throw new Error('two were sealed')
    first.late = true
    made.seal('ta-2', second.about, {
      answers: [],
      replaces: second.id,
      change: { by: 'BM', because: 'swapped plates', voids: true },
    })
    expect(foundIn(made).found).toEqual([])
  })
})
