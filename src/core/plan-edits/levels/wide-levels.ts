import type { FactorKind } from '@/core/trial/factor.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { measuredLevel } from './measured-level.ts'
import { presentValue } from './next-level.ts'

/**
 * How far the outermost levels lie from the usual one where few levels are to show much, with the grain that values are rounded to, in each kind's own
 * unit (common practice, from memory); of others a quarter of what the plan has.
 */
const reaches: Partial<Record<FactorKind, { reach: number; grain: number }>> = {
  hydration: { reach: 8, grain: 0.5 },
  salt: { reach: 0.8, grain: 0.1 },
  yeast: { reach: 0.5, grain: 0.05 },
  'preferment-share': { reach: 20, grain: 1 },
  'flour-share': { reach: 25, grain: 1 },
  ingredient: { reach: 3, grain: 0.1 },
  'rest-time': { reach: 20, grain: 1 },
  'proof-time': { reach: 30, grain: 1 },
  'cold-hours': { reach: 12, grain: 1 },
  'fold-count': { reach: 2, grain: 1 },
  'bake-temperature': { reach: 25, grain: 5 },
  'bake-time': { reach: 6, grain: 1 },
  'piece-mass': { reach: 100, grain: 5 },
}
/** Below this water a dough is stiff, and a few points are much (common practice). */
const stiffBelow = 62
const stiffReach = 4

/**
 * So many levels far apart, evenly spaced: around what the plan has now, the control, or up to it (`upTo`: how little will do). Never at nothing
 * or below; the reach shrinks to what there is. None for a choice, nor where the plan has nothing of it.
 */
export function wideLevels(plan: Plan, count: number, upTo: boolean, newId: () => string): Level[] {
  const kind = plan.factor.acts.on
  if (kind === 'choice' || kind === 'own' || count < 2) return []
  const now = presentValue(plan)
  if (!(now > 0)) return []
  const { reach: wide, grain } = reaches[kind] ?? { reach: now / 4, grain: now / 40 }
  const reach = kind === 'hydration' && now < stiffBelow ? stiffReach : wide
  const below = upTo ? count - 1 : Math.floor((count - 1) / 2)
  const wanted = (upTo ? reach : 2 * reach) / (count - 1)
  const most = Math.floor((now - grain) / Math.max(1, below) / grain + 1e-9) * grain
  const rounded = Math.max(1, Math.round(wanted / grain)) * grain
  const step = most >= grain ? Math.min(rounded, most) : rounded
  const down = most >= grain ? below : 0
  return Array.from({ length: count }, (_, at) => {
    const value = Number((now + (at - down) * step).toPrecision(10))
    return measuredLevel(newId(), value, at === down)
  })
}
