import type { MixingWay } from '@/core/kitchen/mixing-way.ts'
import type { Plan, TemperaturePlan } from '@/core/trial/plan-record.ts'

const usual: TemperaturePlan = {
  wantedDoughCelsius: 24,
  flourCelsius: 21,
  roomCelsius: 21,
  matched: true,
}

/** The plan with its dough temperature planned, from usual temperatures (common practice), or no longer. */
export function withTemperaturePlanned(plan: Plan, planned: boolean): Plan {
  return { ...plan, temperature: planned ? (plan.temperature ?? usual) : null }
}

/** The plan with some of its temperatures set. */
export function withTemperatures(plan: Plan, next: Partial<TemperaturePlan>): Plan {
  return { ...plan, temperature: { ...(plan.temperature ?? usual), ...next } }
}

/** The plan with the water matched to each batch, or one water for all; where no temperature is planned it stays as it is. */
export function withMatchedWater(plan: Plan, matched = true): Plan {
  return plan.temperature ? withTemperatures(plan, { matched }) : plan
}

/** The plan with its mixing work stated (kJ a kg flour), or left to be worked out (null). */
export function withMixingWork(plan: Plan, kilojoulesPerKilogram: number | null): Plan {
  const { mixingKilojoulesPerKilogram: _, ...temperature } = plan.temperature ?? usual
  const work =
    kilojoulesPerKilogram === null ? {} : { mixingKilojoulesPerKilogram: kilojoulesPerKilogram }
  return { ...plan, temperature: { ...temperature, ...work } }
}

/** The plan with its way of mixing stated, or left to the mixer's entry and the steps (the empty text). */
export function withMixingWay(plan: Plan, way: MixingWay | ''): Plan {
  const { mixedBy: _, ...temperature } = plan.temperature ?? usual
  return { ...plan, temperature: { ...temperature, ...(way === '' ? {} : { mixedBy: way }) } }
}
