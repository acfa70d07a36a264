import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { staggerSeconds } from './bake-order.ts'
import { wayToOvenSeconds } from './way-to-oven.ts'

/**
 * When a level's dough is begun to meet the oven at its turn (from 0), in seconds from the first turn, and so below zero: the
 * turns of the oven follow each other by one stagger, and what takes longer to the oven is begun sooner.
 */
export function begunSeconds(plan: Plan, level: Level | null, turn: number): number {
  return turn * staggerSeconds(plan) - wayToOvenSeconds(plan, level)
}
