import { samples } from '@/app/services/samples.ts'
import type { HowMuch, UsualHowMuch } from '@/core/design/proposal/how-much.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { planFromOther } from '@/core/plan-edits/start/start-from.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

export interface StartChoice<Value> {
  value: Value
  name: string
  hint: string
}

type Begun = Parameters<typeof startingPlan>[0]

/** What a trial can start from: a plain loaf, the plan of a sample, or an empty place for one's own formula. */
export const bakes: readonly StartChoice<string>[] = [
  { value: 'plain', name: 'Country loaf', hint: 'free, rested' },
  { value: 'focaccia-hydration', name: 'Focaccia', hint: 'a pan, the same day' },
  { value: 'pan-loaf-salt', name: 'Pan loaf', hint: 'rested, sliced' },
  { value: 'flatbread-hydration', name: 'Flatbread', hint: 'hot from the oven' },
  { value: 'own', name: 'My own formula', hint: 'pasted on the next page' },
]

export const changes: readonly StartChoice<FactorKind>[] = [
  { value: 'hydration', name: 'Water', hint: 'how wet the dough is' },
  { value: 'salt', name: 'Salt', hint: 'how little will do' },
  { value: 'yeast', name: 'Yeast', hint: 'how much' },
  { value: 'proof-time', name: 'Time', hint: 'how long it proofs' },
  { value: 'bake-temperature', name: 'Oven', hint: 'how hot' },
  { value: 'choice', name: 'One or the other', hint: 'flours, tools, a step left out' },
  { value: 'own', name: 'Something else', hint: 'in a unit of my own' },
]

export const amounts: readonly StartChoice<UsualHowMuch | 'say'>[] = [
  { value: 'one-evening-alone', name: 'One evening, alone', hint: 'three doughs, you taste blind' },
  { value: 'two-fridays', name: 'Two Fridays with friends', hint: 'six to eight mouths, twice' },
  { value: 'class', name: 'A class', hint: 'several benches, one day' },
  { value: 'say', name: 'Let me say it', hint: 'days, mouths, doughs, bites' },
]

/** What stands in the fields of somebody who says it, until changed. */
export const saidFirst: HowMuch = { days: 2, benches: 1, tasters: 4, doughs: 4, bites: 6 }

/** The plan of what is baked, before anything is proposed for it. */
export async function planOfBake(
  bake: string,
  begun: Begun,
  kitchen: readonly KitchenThing[],
): Promise<Plan> {
  const plain = startingPlan(begun)
  const sample = samples.find(({ name }) => name === bake)
  if (!sample) return plain
  const read = readTrialFile(await sample.read())
  if (!read.ok) throw new Error(`the sample ${bake} cannot be read`)
  return planFromOther(plain, planInForce(read.whole), kitchen)
}
