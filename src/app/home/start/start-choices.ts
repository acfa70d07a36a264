import type { HowMuch, UsualHowMuch } from '@/core/design/proposal/how-much.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import { asSentenceStart } from '@/core/wording/words/list-text.ts'
import type { Bake } from './start-bake.ts'

export interface StartChoice<Value> {
  value: Value
  name: string
  hint: string
}

/** What stands open in the first question: a plain loaf, and the plans of the samples. */
const bakes = {
  plain: { from: 'plain' },
  focaccia: { from: 'sample', name: 'focaccia-hydration', bread: 'focaccia' },
  'pan-loaf': { from: 'sample', name: 'pan-loaf-salt', bread: 'pan loaf' },
  flatbread: { from: 'sample', name: 'flatbread-hydration', bread: 'flatbread' },
} as const satisfies Record<string, Bake>

type OpenBake = keyof typeof bakes

export const openBake = (value: OpenBake): Bake => bakes[value]

export const openBakes: readonly StartChoice<OpenBake>[] = [
  { value: 'plain', name: 'Country loaf', hint: 'free, rested' },
  { value: 'focaccia', name: 'Focaccia', hint: 'a sample: a pan, the same day' },
  { value: 'pan-loaf', name: 'Pan loaf', hint: 'a sample: rested, sliced' },
  { value: 'flatbread', name: 'Flatbread', hint: 'a sample: hot from the oven' },
]

/** Of these the bake that is taken, if it is one that stands open. */
export function openBakeOf(bake: Bake | null): OpenBake | null {
  return openBakes.find(({ value }) => bakes[value] === bake)?.value ?? null
}

/** What stands behind one press each. */
export type Shelf = 'usual' | 'house' | 'trial' | 'pasted'

export const shelves: readonly { value: Shelf; name: string }[] = [
  { value: 'usual', name: 'Another usual bread' },
  { value: 'house', name: 'From a house formula' },
  { value: 'trial', name: 'From an earlier trial' },
  { value: 'pasted', name: 'Paste a formula' },
]

const changes: readonly StartChoice<FactorKind>[] = [
  { value: 'hydration', name: 'Water', hint: 'how wet the dough is' },
  { value: 'salt', name: 'Salt', hint: 'how little will do' },
  { value: 'yeast', name: 'Yeast', hint: 'how much' },
  { value: 'proof-time', name: 'Time', hint: 'how long it proofs' },
  { value: 'bake-temperature', name: 'Oven', hint: 'how hot' },
  { value: 'choice', name: 'One or the other', hint: 'flours, tools, a step left out' },
  { value: 'own', name: 'Something else', hint: 'in a unit of my own' },
]

/** What can be changed; first what an earlier trial changed, where it is none of the usual. */
export function changesOf(bake: Bake | null): readonly StartChoice<FactorKind>[] {
  if (bake?.from !== 'trial') return changes
  const { acts, name } = bake.plan.factor
  if (changes.some(({ value }) => value === acts.on)) return changes
  return [
    { value: acts.on, name: asSentenceStart(name), hint: 'as in the earlier trial' },
    ...changes,
  ]
}

export const amounts: readonly StartChoice<UsualHowMuch | 'say'>[] = [
  { value: 'one-evening-alone', name: 'One evening, alone', hint: 'three doughs, you taste blind' },
  { value: 'two-fridays', name: 'Two Fridays with friends', hint: 'six to eight mouths, twice' },
  { value: 'class', name: 'A class', hint: 'several benches, one day' },
  { value: 'say', name: 'Let me say it', hint: 'days, mouths, doughs, bites' },
]

/** What stands in the fields of somebody who says it, until changed. */
export const saidFirst: HowMuch = { days: 2, benches: 1, tasters: 4, doughs: 4, bites: 6 }
