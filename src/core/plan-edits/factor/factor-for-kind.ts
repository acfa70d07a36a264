import { usualLevels } from '@/core/plan-edits/levels/usual-levels.ts'
import { namingWhatStands } from '@/core/plan-edits/parts/what-stands.ts'
import { withBatchFor } from '@/core/plan-edits/pieces/with-doughs.ts'
import type { FactorKind } from '@/core/trial/factor.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { factsOfKind } from './factor-kinds.ts'
import { actsOfKind, withTarget } from './factor-target.ts'
import { withoutPutIn } from './put-in.ts'
import { questionOfKind } from './usual-question.ts'

/**
 * The plan with its factor turned to another kind: its usual name, unit and splitting point, moving the first thing of
 * the plan that fits. What the kind needs and the plan has not (a salt, a poolish, a proof step) is put in. The levels
 * are new ones around what the plan has now, since the numbers of one kind mean nothing to another. What the kind before
 * put in, untouched, goes with it.
 */
export function withFactorKind(plan: Plan, kind: FactorKind, newId: () => string): Plan {
  if (kind === plan.factor.acts.on) return plan
  const facts = factsOfKind(kind)
  const ready = withTarget(withoutPutIn(plan), kind, newId)
  const { name, unitOfMeasure, splitsAt } = facts
  const acts = actsOfKind(ready, kind)
  const turned: Plan = {
    ...ready,
    question: questionOfKind(ready.question, kind),
    factor: { name, unitOfMeasure, splitsAt: plan.factor.splitsAt, held: plan.factor.held, acts },
  }
  const levels = usualLevels(turned, newId)
  const doughs = splitsAt === 'mix' ? 'apart' : 'one'
  const next: Plan = { ...turned, factor: { ...turned.factor, splitsAt }, doughs, levels }
  return namingWhatStands(withBatchFor(plan, next))
}
