import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { formulaViews, type PrefermentView } from '@/core/formula/formula-views.ts'
import { dryHeat, flourHeat, waterHeat } from './heat-constants.ts'

/** One body of the heat balance: its heat capacity in kJ/K and its temperature; the water's own is what is sought. */
export interface HeatPart {
  what: 'flour' | 'water' | 'preferment' | 'ingredient' | 'bowl'
  name: string
  grams: number
  kilojoulesPerKelvin: number
  celsius: number
}

/** Everything at the mix but the water, and what gives or takes heat beside it. Masses in grams. */
export interface MixBodies {
  parts: HeatPart[]
  waterGrams: number
  /** Flour still dry at this mix: that of a preferment is wet already and gives no heat now. */
  dryFlourGrams: number
  /** All flour of the dough, which the mixing work is counted on. */
  flourGrams: number
}

export interface MixTemperatures {
  flourCelsius: number
  roomCelsius: number
  /** Bowl that takes part: grams, kJ/(kg K) and its temperature. */
  bowl?: { grams: number; heat: number; celsius: number }
}

/** Specific heat of an ingredient, kJ/(kg K): water's share at water's, the rest at its dry matter's (mixture rule). */
export function specificHeat(ingredient: Pick<Ingredient, 'kind' | 'waterPercent'>): number {
  if (ingredient.kind === 'water') return waterHeat
  if (ingredient.kind === 'flour') return flourHeat
  const water = (ingredient.waterPercent ?? 0) / 100
  return water * waterHeat + (1 - water) * dryHeat[ingredient.kind]
}

/**
 * The bodies of a batch at the mix: final-dough flour at the flour's temperature, preferments whole at their own (else the
 * room's), every other ingredient at its own (else the room's), the bowl if it counts.
 */
export function mixBodies(formula: Formula, temperatures: MixTemperatures): MixBodies {
  const views = formulaViews(formula)
  const { flourCelsius, roomCelsius, bowl } = temperatures
  const final = views.finalDough.rows.flatMap((row, index): HeatPart[] => {
    const one = formula.ingredients[index]
    if (!one || row.kind === 'water' || !(row.grams > 0)) return []
    const isFlour = row.kind === 'flour'
    const celsius = one.celsius ?? (isFlour ? flourCelsius : roomCelsius)
    return [part(isFlour ? 'flour' : 'ingredient', row.name, row.grams, specificHeat(one), celsius)]
  })
  const ahead = views.preferments.map((view, index) => {
    const celsius = formula.preferments[index]?.celsius ?? roomCelsius
    return part('preferment', view.name, view.totalGrams, prefermentHeat(formula, view), celsius)
  })
  const bowls =
    bowl && bowl.grams > 0 ? [part('bowl', '', bowl.grams, bowl.heat, bowl.celsius)] : []
  return {
    parts: [...final, ...ahead, ...bowls],
    waterGrams: gramsOf(views.finalDough.rows, 'water'),
    dryFlourGrams: views.finalDough.flourGrams,
    flourGrams: views.flourGrams,
  }
}

function part(
  what: HeatPart['what'],
  name: string,
  grams: number,
  heat: number,
  celsius: number,
): HeatPart {
  return { what, name, grams, kilojoulesPerKelvin: (grams / 1000) * heat, celsius }
}

function prefermentHeat(formula: Formula, view: PrefermentView): number {
  const heats = view.rows.map(({ ingredientId, grams }) => {
    const one = formula.ingredients.find(({ id }) => id === ingredientId)
    return one ? grams * specificHeat(one) : 0
  })
  return view.totalGrams > 0 ? heats.reduce((sum, heat) => sum + heat, 0) / view.totalGrams : 0
}

function gramsOf(rows: { kind: string; grams: number }[], kind: string): number {
  return rows.reduce((sum, row) => sum + (row.kind === kind ? row.grams : 0), 0)
}
