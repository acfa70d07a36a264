import { samples } from '@/app/services/samples.ts'
import type { Formula } from '@/core/formula/formula-record.ts'
import { type House, houseInForce } from '@/core/house/house-record.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { usualQuestion } from '@/core/plan-edits/factor/usual-question.ts'
import { planAround } from '@/core/plan-edits/start/plan-around.ts'
import { planOfUsualBread } from '@/core/plan-edits/start/plan-of-usual-bread.ts'
import { planFromOther } from '@/core/plan-edits/start/start-from.ts'
import { startingPlan } from '@/core/plan-edits/start/starting-plan.ts'
import type { UsualBread } from '@/core/plan-edits/start/usual-breads.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

type Begun = Parameters<typeof startingPlan>[0]

/** What a trial is begun from. */
export type Bake =
  | { from: 'plain' }
  | { from: 'sample'; name: string; bread: string }
  | { from: 'usual'; bread: UsualBread }
  | { from: 'house'; house: House }
  | { from: 'trial'; plan: Plan }
  | { from: 'pasted'; formula: Formula }

/** The plan of what is baked, before anything is proposed for it. */
export async function planOfBake(
  bake: Bake,
  begun: Begun,
  kitchen: readonly KitchenThing[],
): Promise<Plan> {
  const plain = startingPlan(begun)
  switch (bake.from) {
    case 'plain':
      return plain
    case 'sample': {
      const plan = planFromOther(plain, await planOfSample(bake.name), kitchen)
      return { ...plan, question: usualQuestion(plan.factor.acts.on, bake.bread) }
    }
    case 'usual':
      return planOfUsualBread(plain, bake.bread, begun.newId)
    case 'house':
      return planAround(plain, houseInForce(bake.house), begun.newId)
    case 'trial':
      return planFromOther(plain, bake.plan, kitchen)
    case 'pasted':
      return planAround(plain, { formula: bake.formula, steps: [], temperature: null }, begun.newId)
  }
}

async function planOfSample(name: string): Promise<Plan> {
  const sample = samples.find((each) => each.name === name)
  if (!sample) throw new Error(`no sample ${name}`)
  const read = readTrialFile(await sample.read())
  if (!read.ok) throw new Error(`the sample ${name} cannot be read`)
  return planInForce(read.whole)
}
