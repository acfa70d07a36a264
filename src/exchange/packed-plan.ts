import * as z from 'zod/mini'
import { kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import { listOf } from '@/core/record/count.ts'
import { planShape } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { ArrivingPlan } from '@/notebook/arriving-plan.ts'
import { kitchenIdsOf } from '@/notebook/kitchen-of-trial.ts'
import { type Entry, readMessage } from './messages.ts'
import { packedText, textOfPacked } from './packed-copy.ts'

const packedShape = z.strictObject({
  plan: planShape,
  base: planShape,
  things: listOf(kitchenThingShape, { most: 500 }),
})

/** A changed plan as it is handed over: with what it began from, which packs to little, and the things of the kitchen it names. */
export function entryOfPlan(
  { plan, base }: Omit<ArrivingPlan, 'things'>,
  whole: WholeTrial,
): Extract<Entry, { kind: 'plan' }> {
  const named = kitchenIdsOf({ plans: [plan], sessions: [], events: [], ballots: [] })
  const things = whole.kitchen.filter(({ id }) => named.has(id))
  return { kind: 'plan', text: packedText(JSON.stringify({ plan, base, things })) }
}

/** The plan that such an entry brings; null where it is none. */
export function planOfEntry({ text }: Extract<Entry, { kind: 'plan' }>): ArrivingPlan | null {
  const unpacked = textOfPacked(text)
  return unpacked === null ? null : readMessage(packedShape, unpacked)
}
