import { waterPlan } from '@/core/dough-temperature/water-plan.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { scaleFromText } from '@/core/kitchen/scale-from-text.ts'
import { learnedMixingWork, workForPlan } from '@/core/learned/learned-mixing-work.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { type WeighSheet, weighSheet } from '@/core/weighing/weigh-sheet.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { planStops } from './plan-stops.ts'
import { readTrial, stillSealed } from './read-trial.ts'
import { CommandTrouble } from './trouble.ts'
import { jsonOption, unsealOption, type Verb } from './verb.ts'
import { weighSheetText } from './weigh-sheet-text.ts'

/** The weigh sheet of one session on the plan's scales, or on scales given at the terminal. */
export const weighVerb: Verb = {
  summary: 'write the weigh sheet of every batch',
  about:
    'Weights on the plan’s scales with the level they really give, and the temperature of each batch’s water where the plan names temperatures. --scale 0.1:2000 names a scale that shows 0.1 g and holds 2000 g; several may be given and replace the plan’s.',
  options: {
    scale: { type: 'string', multiple: true, value: 'STEP:MOST', help: 'a scale, in grams' },
    unseal: unsealOption,
    json: jsonOption,
  },
  answer: async (asked) => {
    const whole = readTrial(asked.file)
    if (sealed(whole) && !asked.flag('unseal')) throw stillSealed(asked.file)
    const plan = planInForce(whole)
    const given = asked.texts('scale').map(scaleNamed)
    const sheet = sheetOn(plan, whole.kitchen, given)
    const taught = workForPlan(learnedMixingWork([whole]), plan, whole.kitchen)
    const water = waterPlan(plan, whole.kitchen, taught)
    const stops = planStops(whole)
    return asked.flag('json')
      ? JSON.stringify({ ...sheet, water, toMend: stops }, null, 2)
      : weighSheetText(plan, sheet, water, stops)
  },
}

function scaleNamed(text: string, index: number): KitchenThing {
  const read = scaleFromText(text, `given-${index + 1}`)
  if (read.ok) return read.scale
  throw new CommandTrouble(
    `--scale ${text}: this is no scale. Write what it shows and what it holds in grams, such as 0.1:2000.`,
  )
}

function sheetOn(
  plan: Plan,
  kitchen: readonly KitchenThing[],
  given: readonly KitchenThing[],
): WeighSheet {
  if (given.length === 0) return weighSheet(plan, kitchen)
  const others = kitchen.filter(({ kind }) => kind !== 'scale')
  const kept = plan.kitchenIds.filter((id) => others.some((thing) => thing.id === id))
  const named = { ...plan, kitchenIds: [...kept, ...given.map(({ id }) => id)] }
  return weighSheet(named, [...others, ...given])
}
