import type { Change, Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { startingWater } from './own-water.ts'

/** A difference to start from: the water the plan has now, and the option's own name for what it uses, once it has one. */
export function startedChange({ formula, steps }: Plan, level: Level, what: string): Change | null {
  const [ingredient] = formula.ingredients
  const [step] = steps
  if (what === 'hydration') return { what, percent: startingWater(formula) }
  if (what === 'tool') return { what, name: 'Another tool' }
  if (what === 'note') return { what, text: '' }
  if (what === 'ingredient' && ingredient)
    return { what, ingredientId: ingredient.id, name: ownName(level) ?? ingredient.name }
  return what === 'step' && step ? { what, stepId: step.id, done: false } : null
}

const ownName = ({ label }: Level) => (/^Option \d+$/.test(label) ? null : label)
