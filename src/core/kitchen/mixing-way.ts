import * as z from 'zod/mini'

/**
 * How a dough is mixed, as far as its warmth goes: by hand in a bowl or tub; kneaded by hand on the bench, where warm hands
 * heat it; by a gentle machine (fork, diving arm, slow speed); by a stand mixer; by a spiral or a long second speed.
 */
export const mixingWays = ['hand', 'bench', 'gentle', 'stand', 'spiral'] as const

export const mixingWayShape = z.enum(mixingWays)

export type MixingWay = z.infer<typeof mixingWayShape>

/** Mixing work that a plan or a mixer may state, kJ per kg of flour: below zero where evaporation takes more than hands give. */
export const statedWorkShape = z.number().check(z.gte(-30), z.lte(100))
