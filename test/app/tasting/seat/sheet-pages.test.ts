import { expect, test } from 'vitest'
import { beginsFlight, sheetPages } from '@/app/tasting/seat/sheet-pages.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tastingTrial } from '../../../journeys/tasting-trial.ts'

/** The view of one taster: so many levels in so many flights, so many questions a code. */
function viewOf(levels: number, flights: number, questions: number) {
  const [plan] = tastingTrial().plans
  const liking = plan?.responses.find(({ id }) => id === 'liking')
  if (!liking) throw new Error('liking is asked')
  const whole = tastingTrial({
    flights,
    levels: Array.from({ length: levels }, (_, at) => ({
      ...{ id: `level-${at}`, value: 60 + at, label: String(60 + at), control: at === 0 },
    })),
    responses: Array.from({ length: questions }, (_, at) => ({
      ...{ ...liking, id: at === 0 ? 'liking' : `asked-${at}`, name: `Asked ${at}` },
    })),
    atTable: { ranking: { ties: true }, asksUsual: true },
  })
  return blindView(whole, whole.sessions[0]?.id ?? '', 'club-3')
}

test('twelve codes of up to five questions, the order and the guess stand on two pages, each code once and whole', () => {
  for (let questions = 1; questions <= 5; questions += 1)
    for (const [levels, flights] of [
      [12, 1],
      [6, 2],
      [4, 3],
    ] as const) {
      const view = viewOf(levels, flights, questions)
      const { pages, rowMillimetres } = sheetPages(view)
      expect(pages.length, `${levels} × ${flights}, ${questions} questions`).toBeLessThanOrEqual(2)
      expect(pages.flat()).toEqual(view.servings)
      expect(pages.flat()).toHaveLength(12)
      // A ring of 6.2 mm wants its row.
      expect(rowMillimetres).toBeGreaterThan(6.2)
    }
  // Where few are asked rows stay comfortable.
  expect(sheetPages(viewOf(4, 1, 2))).toMatchObject({ rowMillimetres: 8, noteLine: true })
})

test('the first code of each flight is marked where there are several, and nothing where there is one', () => {
  const begins = (levels: number, flights: number) => {
    const { servings } = viewOf(levels, flights, 2)
    return servings.flatMap((serving, at) => (beginsFlight(servings, at) ? [serving.position] : []))
  }
  expect(begins(6, 2)).toEqual([1, 7])
  expect(begins(4, 3)).toEqual([1, 5, 9])
  expect(begins(12, 1)).toEqual([])
})
