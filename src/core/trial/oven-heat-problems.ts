import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingsOfKind } from '@/core/kitchen/things-of-kind.ts'
import { fahrenheitFromCelsius } from '@/core/units/temperature.ts'
import { levelBounds } from './level-bounds.ts'
import { inFahrenheit, levelCelsius } from './level-celsius.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'

type Kitchen = readonly KitchenThing[]

/** Ovens bake between 100 °C (a slow drying) and 500 °C (a pizza oven): common practice, no source. */
const usualOven = { least: 100, most: 500 }

/** Levels that are oven temperatures no oven usually has, or the plan's own oven does not reach; in the factor's unit. */
export function levelHeatProblems({ factor, levels, kitchenIds }: Plan, kitchen: Kitchen) {
  if (factor.acts.on !== 'bake-temperature') return []
  const { least, most } = levelBounds('bake-temperature')
  const unit = inFahrenheit(factor) ? '°F' : '°C'
  return levels.flatMap(({ value }, index): PlanProblem[] => {
    if (value === null || !(value >= least && value <= most)) return []
    const path = `/levels/${index}/value`
    return askOfHeat(levelCelsius(factor, value), { path, unit, kitchenIds, kitchen })
  })
}

/** The same of a bake's own temperature, °C, where the levels do not set it. */
export function stepHeatProblems({ factor, steps, kitchenIds }: Plan, kitchen: Kitchen) {
  const { acts } = factor
  return steps.flatMap(({ id, kind, celsius }, index): PlanProblem[] => {
    const byLevel = acts.on === 'bake-temperature' && acts.stepId === id
    if (kind !== 'bake' || byLevel || celsius === undefined) return []
    return askOfHeat(celsius, {
      ...{ path: `/steps/${index}/celsius`, unit: '°C', kitchenIds, kitchen },
    })
  })
}

interface HeatAsked {
  path: string
  unit: '°C' | '°F'
  kitchenIds: readonly string[]
  kitchen: Kitchen
}

function askOfHeat(celsius: number, { path, unit, kitchenIds, kitchen }: HeatAsked): PlanProblem[] {
  // Tenths, so that a value typed in °F comes back as it was.
  const shown = (degrees: number) =>
    unit === '°C' ? degrees : Math.round(fahrenheitFromCelsius(degrees) * 10) / 10
  if (celsius < usualOven.least || celsius > usualOven.most) {
    const [least, most] = [shown(usualOven.least), shown(usualOven.most)]
    const unusual = { reason: 'oven-heat-unusual' as const, value: shown(celsius), least, most }
    return [{ path, severity: 'ask', ...unusual, unit }]
  }
  const ovens = thingsOfKind(kitchen, 'oven', [...kitchenIds])
  const hottest = Math.max(...ovens.map((oven) => oven.maxCelsius ?? Number.POSITIVE_INFINITY))
  if (ovens.length === 0 || celsius <= hottest) return []
  const names = ovens.map(({ name }) => name)
  const past = { reason: 'hotter-than-oven' as const, value: shown(celsius), most: shown(hottest) }
  return [{ path, severity: 'ask', ...past, unit, names }]
}
