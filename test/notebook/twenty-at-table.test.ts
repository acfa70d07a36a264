import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { blindView, servingByCode } from '@/core/tasting/blind-view.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { tastingTrial } from '../journeys/tasting-trial.ts'
import { freshName, notebookWithTrial } from './notebook-of.ts'

const tasters = Array.from({ length: 20 }, (_, at) => `many-${at + 1}`)

/** Six levels, twenty tasters of made-up codes, nobody has tasted yet. */
function sixForTwenty() {
  const levels = Array.from({ length: 6 }, (_, at) => ({
    id: `level-${at + 1}`,
    value: 66.4 + at * 2.3,
    label: (66.4 + at * 2.3).toFixed(1),
    control: at === 0,
  }))
  const whole = tastingTrial({
    levels,
    tasters: tasters.map((tasterId) => ({ tasterId, knows: false })),
  })
  const kitchen = tasters.map((id, at) => ({ id, kind: 'taster' as const, initials: `T${at}` }))
  return { ...whole, kitchen: [...whole.kitchen, ...kitchen] }
}

test('twenty tasters, six servings each, by the code alone: every ballot stands with its taster and its serving, sealed once', async () => {
  const notebook = await notebookWithTrial(freshName(), sixForTwenty())
  const now = async () => {
    const whole = await notebook.wholeTrial('trial-1')
    const session = whole?.sessions[0]
    if (!whole || !session) throw new Error('a trial with a session')
    return { whole, session }
  }
  const { session } = await now()
  const scored: string[] = []
  for (const [at, tasterId] of tasters.entries()) {
    const { whole } = await now()
    const { servings } = blindView(whole, session.id, tasterId)
    expect(servings).toHaveLength(6)
    for (const [turn, { code }] of servings.entries()) {
      const serving = servingByCode(session, code)
      if (!serving) throw new Error(`no serving under ${code}`)
      const liking = ((at + turn) % 9) + 1
      const answers = [
        { responseId: 'liking', value: liking },
        { responseId: 'chew', value: 3 },
      ]
      const by = { trialId: 'trial-1', sessionId: session.id, tasterId }
      const ballot = { ...by, about: { kind: 'serving', id: serving.id } as const, answers }
      await notebook.sealBallot(ballot)
      // A second tap of the same seal changes nothing.
      if (turn === 5)
        await expect(notebook.sealBallot(ballot)).rejects.toMatchObject({
          reason: 'refused-record',
        })
      scored.push(`${tasterId} ${serving.id} ${liking}`)
    }
  }
  const { whole } = await now()
  const kept = whole.ballots.map(
    ({ tasterId, about, answers }) => `${tasterId} ${about.id} ${answers[0]?.value}`,
  )
  expect(kept).toHaveLength(120)
  expect(new Set(kept)).toEqual(new Set(scored))
  const state = tastingState(whole, session.id)
  expect(state.complete).toBe(true)
  // Dealt: each taster got all six, in an order of their own list.
  for (const { tasterId, servingIds } of session.dealt.tasterOrders)
    expect(
      scored.filter((line) => line.startsWith(`${tasterId} `)).map((line) => line.split(' ')[1]),
    ).toEqual(servingIds)
})
