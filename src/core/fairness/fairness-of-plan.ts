import type { Spread } from '@/core/design/spread.ts'
import type { LearnedWork } from '@/core/dough-temperature/learn-mixing-work.ts'
import { ageItems } from '@/core/fairness/items/age-items.ts'
import { bakeItems } from '@/core/fairness/items/bake-items.ts'
import {
  flourShareItems,
  foldItems,
  restInMixItems,
  secondWaterItems,
  stockItems,
} from '@/core/fairness/items/dough-care-items.ts'
import { evidenceItems, intentItems } from '@/core/fairness/items/evidence-items.ts'
import { massItems } from '@/core/fairness/items/mass-items.ts'
import {
  doughItems,
  starterItems,
  stepItems,
  waitingItems,
} from '@/core/fairness/items/method-items.ts'
import { mixerItems, waterItems } from '@/core/fairness/items/mixing-items.ts'
import { orderItems } from '@/core/fairness/items/order-items.ts'
import { flourItems, rangeItems } from '@/core/fairness/items/range-items.ts'
import { ripenessItems } from '@/core/fairness/items/ripeness-items.ts'
import { choiceItems, strengthItems } from '@/core/fairness/items/strength-items.ts'
import { tastingItems } from '@/core/fairness/items/tasting-items.ts'
import { benchItems, weighingItems } from '@/core/fairness/items/weighing-items.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { previewSessions } from '@/core/session/preview-sessions.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { weighSheet } from '@/core/weighing/weigh-sheet.ts'
import type { FairnessItem } from './fairness-item.ts'
import { inTurn } from './in-turn.ts'

export interface Circumstances {
  kitchen: readonly KitchenThing[]
  trialSeed: number
  /** Sessions begun already; those still planned are dealt ahead to read their orders. */
  sessions: readonly Session[]
  /** Mixing work learned from logged dough temperatures, where there is any. */
  learned?: LearnedWork | null
  /** How the answers of the plan's tasters were seen to scatter; what is common where nothing was learned. */
  spread?: Spread | null
}

/**
 * The fairness check of a plan: what else will change with the factor and how much, what weakens the design, and what to do
 * about each; the most pressing first. Names levels beside orders, so it is not for eyes that are to taste blind. Orders are
 * left out where a session cannot be dealt, and what depends on a dough that cannot be made: `planProblems` says why.
 */
export function fairnessOfPlan(plan: Plan, circumstances: Circumstances): FairnessItem[] {
  const items = [
    ...conductOfPlan(plan, circumstances),
    ...evidenceItems(plan, circumstances.spread),
  ]
  return inTurn(items, plan.accepted)
}

/** The check without what the design can detect, which takes longest: riders, orders, weighing, tasting and what was written down. */
export function conductOfPlan(plan: Plan, circumstances: Circumstances): FairnessItem[] {
  const { kitchen, trialSeed, sessions, learned = null } = circumstances
  const sheet = weighSheet(plan, kitchen)
  const preview = previewSessions(plan, trialSeed, sessions)
  const dealt = preview.ok ? preview.sessions : []
  return [
    ...waterItems(plan, kitchen, learned),
    ...massItems(plan),
    ...strengthItems(plan),
    ...choiceItems(plan),
    ...ripenessItems(plan),
    ...starterItems(plan),
    ...waitingItems(plan),
    ...stepItems(plan),
    ...bakeItems(plan),
    ...foldItems(plan),
    ...flourShareItems(plan, kitchen),
    ...restInMixItems(plan, kitchen, learned),
    ...secondWaterItems(plan),
    ...stockItems(plan),
    ...doughItems(plan),
    ...orderItems(plan, dealt),
    ...ageItems(plan, dealt),
    ...weighingItems(plan, sheet),
    ...benchItems(plan),
    ...mixerItems(plan, kitchen, sheet),
    ...tastingItems(plan),
    ...intentItems(plan),
    ...rangeItems(plan),
    ...flourItems(plan, kitchen),
  ]
}
