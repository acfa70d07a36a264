import { describe, expect, test } from 'vitest'
import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

/** The first item of a list that the sound trial is known to fill. */
const first = <Item>(items: readonly Item[]): Item => {
  const [item] = items
  if (item === undefined) throw new Error('the list is empty')
  return item
}

const doubled: [string, string, (whole: WholeTrial) => unknown[]][] = [
  [
    'a serving in a taster’s order',
    '/sessions/0/dealt/tasterOrders/0/servingIds',
    (whole) => first(first(whole.sessions).dealt.tasterOrders).servingIds,
  ],
  [
    'a piece in a flight',
    '/sessions/0/dealt/flights/0/pieceIds',
    (whole) => first(first(whole.sessions).dealt.flights).pieceIds,
  ],
  [
    'a piece in a load',
    '/sessions/0/dealt/loads/0/pieceIds',
    (whole) => first(first(whole.sessions).dealt.loads).pieceIds,
  ],
  [
    'a dough in the order of the day',
    '/sessions/0/dealt/doughOrder',
    (whole) => first(whole.sessions).dealt.doughOrder,
  ],
  [
    'a thing of the kitchen in the plan',
    '/plans/0/kitchenIds',
    (whole) => first(whole.plans).kitchenIds,
  ],
  ['a response in a ballot', '/ballots/0/answers', (whole) => first(whole.ballots).answers],
  [
    'a taster’s order',
    '/sessions/0/dealt/tasterOrders',
    (whole) => first(whole.sessions).dealt.tasterOrders,
  ],
]

describe('what may stand only once', () => {
  test.each(doubled)('%s that stands twice is a trouble in its place', (_, pointer, listOf) => {
    const whole = structuredClone(wholeTrialOf())
    const list = listOf(whole)
    list.push(structuredClone(first(list)))
    const found = referenceTroubles(whole).map((each) => each.pointer)
    expect(found.some((each) => each.startsWith(`${pointer}/${list.length - 1}`))).toBe(true)
  })
})
