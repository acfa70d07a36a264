import { describe, expect, it } from 'vitest'
import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

function broken(spoil: (whole: WholeTrial) => void) {
  const whole = structuredClone(wholeTrialOf())
  spoil(whole)
  return referenceTroubles(whole)
}
const at = <Item>(items: Item[], index: number): Item => {
  const item = items[index]
  if (item === undefined) throw new Error(`nothing at ${index}`)
  return item
}

describe('referenceTroubles', () => {
  it('finds nothing in a sound trial with every kind of record', () => {
    expect(referenceTroubles(wholeTrialOf())).toEqual([])
  })

  const spoils: [string, (whole: WholeTrial) => void, { pointer: string; names: string }][] = [
    [
      'the plan in force',
      (w) => (w.trial.planId = 'gone'),
      { pointer: '/trial/planId', names: 'gone' },
    ],
    [
      'a plan of another trial',
      (w) => (at(w.plans, 0).trialId = 'other'),
      { pointer: '/plans/0/trialId', names: 'other' },
    ],
    [
      'the main response',
      (w) => (at(w.plans, 0).mainResponseId = 'gone'),
      { pointer: '/plans/0/mainResponseId', names: 'gone' },
    ],
    [
      "the plan's taster",
      (w) => (at(at(w.plans, 0).tasters, 0).tasterId = 'gone'),
      { pointer: '/plans/0/tasters/0/tasterId', names: 'gone' },
    ],
    [
      "a session's plan",
      (w) => (at(w.sessions, 0).planId = 'gone'),
      { pointer: '/sessions/0/planId', names: 'gone' },
    ],
    [
      "a piece's batch",
      (w) => (at(at(w.sessions, 0).pieces, 0).batchId = 'gone'),
      { pointer: '/sessions/0/pieces/0/batchId', names: 'gone' },
    ],
    [
      "a batch's level",
      (w) => (at(at(w.sessions, 0).batches, 0).levelId = 'gone'),
      { pointer: '/sessions/0/batches/0/levelId', names: 'gone' },
    ],
    [
      'a piece that is baked with its dough',
      (w) => {
        const { kind: _, ...stamped } = at(w.events, 0)
        w.events = [{ ...stamped, kind: 'bake-in', stepId: 'step-bake', pieceIds: ['gone'] }]
      },
      { pointer: '/events/0/pieceIds/0', names: 'gone' },
    ],
    [
      'the piece of a serving',
      (w) => (at(at(w.sessions, 0).dealt.servings, 0).pieceId = 'gone'),
      { pointer: '/sessions/0/dealt/servings/0/pieceId', names: 'gone' },
    ],
    [
      'what an event is about',
      (w) => (at(w.events, 0).about.id = 'gone'),
      { pointer: '/events/0/about/id', names: 'gone' },
    ],
    [
      'what an event corrects',
      (w) => (at(w.events, 0).corrects = 'gone'),
      { pointer: '/events/0/corrects', names: 'gone' },
    ],
    [
      "an answer's response",
      (w) => (at(at(w.ballots, 0).answers, 0).responseId = 'gone'),
      { pointer: '/ballots/0/answers/0/responseId', names: 'gone' },
    ],
    [
      'the taster of a ballot',
      (w) => (at(w.ballots, 0).tasterId = 'gone'),
      { pointer: '/ballots/0/tasterId', names: 'gone' },
    ],
  ]
  for (const [what, spoil, trouble] of spoils)
    it(`finds ${what} that names nothing`, () => {
      expect(broken(spoil)).toContainEqual(trouble)
    })

  it('finds an id used twice, and a code used twice in a trial', () => {
    const twice = broken((w) => {
      w.kitchen.push(structuredClone(at(w.kitchen, 0)))
    })
    const { kitchen, sessions } = wholeTrialOf()
    expect(twice).toContainEqual({
      pointer: `/kitchen/${kitchen.length}/id`,
      names: at(kitchen, 0).id,
    })
    const servings = at(sessions, 0).dealt.servings
    const code = at(servings, 0).code
    const codes = broken((w) => {
      at(at(w.sessions, 0).dealt.servings, 1).code = code
    })
    expect(codes).toContainEqual({ pointer: '/sessions/0/dealt/servings/1/code', names: code })
  })
})
