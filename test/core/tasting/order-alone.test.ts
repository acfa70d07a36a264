import { expect, test } from 'vitest'
import { cellsOf, endsOf, openCells } from '@/app/tasting/paper/sheet-cells.ts'
import { findings } from '@/core/findings/findings.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { tastingSection } from '@/core/report/pages/tasting-section.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import { blindView, servingByCode } from '@/core/tasting/blind-view.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { onlyTastedText, orderText } from '@/core/wording/tasting/before-first-text.ts'
import { tastingTrial } from '../../journeys/tasting-trial.ts'
import { begun, zone } from '../../trial-of/made-up-day.ts'
import { planOf } from '../../trial-of/plan-of.ts'

/** Only an order is asked at the table; what the bench measures is the main response. */
function orderAlone(): WholeTrial {
  const responses = planOf().responses.filter(({ by }) => by !== 'taster')
  return tastingTrial({
    ...{ responses, mainResponseId: responses[0]?.id ?? null },
    tasters: ['club-1', 'club-2', 'club-3'].map((tasterId) => ({ tasterId, knows: false })),
    atTable: { ranking: { ties: false } },
  })
}

test('where only an order is asked each sample is tasted in its turn, and the words ask nothing else of it', () => {
  const whole = orderAlone()
  const view = blindView(whole, whole.sessions[0]?.id ?? '', 'club-1')
  expect(view.questions).toEqual([])
  expect(view.nextCode).toBe(view.servings[0]?.code)
  expect(orderText(view)).toBe(
    'Four samples, one after another. At the end you are asked to put them in order. Please do not talk about them until all have finished.',
  )
  expect(onlyTastedText(view)).toBe(
    'Taste it and keep it in mind: nothing is asked of it alone; when you have tasted all, you put them in order.',
  )
  // The sheet that is typed in has no cells, and the order alone at its end.
  expect([cellsOf(view), openCells(cellsOf(view), 'first', {})]).toEqual([[], []])
  expect(endsOf(view).map(({ label }) => label)).toEqual(['The order, first to last'])
})

test('a ballot without a question completes its serving, and the report says who tasted', () => {
  const whole = orderAlone()
  const [session] = whole.sessions
  if (!session) throw new Error('a session')
  const ballots: Ballot[] = []
  const seal = (tasterId: string, about: Ballot['about'], ranked?: string[][]) =>
    ballots.push({
      ...{ id: `b-${ballots.length}`, trialId: 'trial-1', sessionId: session.id, tasterId, about },
      ...{ device: 'd', count: ballots.length + 1, at: begun + ballots.length, answers: [] },
      ...(ranked ? { ranked } : {}),
    })
  for (const { tasterId } of session.dealt.tasterOrders) {
    const { servings } = blindView({ ...whole, ballots }, session.id, tasterId)
    for (const { code } of servings)
      seal(tasterId, { kind: 'serving', id: servingByCode(session, code)?.id ?? '' })
    const order = servings.map(({ code }) => [code])
    seal(tasterId, { kind: 'ranking', id: session.id }, order)
  }
  expect(tastingState({ ...whole, ballots }, session.id)).toMatchObject({
    complete: true,
    mayUnseal: { ok: true },
  })
  const unsealed: Event = {
    ...{ id: 'e-1', trialId: 'trial-1', sessionId: session.id, device: 'd', count: 1, zone },
    ...{ at: begun + 1000, kind: 'unsealed', about: { kind: 'session', id: session.id } },
  }
  const opened = { ...whole, ballots, events: [unsealed] }
  const scores = scoresOfTrial(opened, { unsealed: false })
  if (!scores.ok) throw new Error(scores.reason)
  const found = findings(scores.scores, { seed: 7, resamples: null })
  expect(found.rankings?.[0]).toMatchObject({ tasters: 3, orders: 3 })
  const [said] = tastingSection(opened, { scores: scores.scores, findings: found } as never).blocks
  expect(said?.kind === 'list' && said.items[0]).toBe(
    'Three tasters, 15 ballots in one session. All tasted blind; the key was kept by the baker.',
  )
})
