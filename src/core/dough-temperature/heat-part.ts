import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { formulaViews, type PrefermentView } from '@/core/formula/formula-views.ts'
import { dryHeat, flourHeat, waterHeat } from './heat-constants.ts'
import { bowlInRoomHeat } from './mixing-heat.ts'
import { wettingHeat } from './wetting-heat.ts'

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
  /** Heat of the flour that is still dry at this mix: that of a preferment is wet already and gives none now. kJ. */
  wettingKilojoules: number
  /** All flour of the dough, which mixing work and room are counted on. */
  flourGrams: number
  /** What bowl, bench and air take part with, kJ/K, and how warm they are. */
  room: { kilojoulesPerKelvin: number; celsius: number }
}

export interface MixTemperatures {
  flourCelsius: number
  roomCelsius: number
  /** Bowl that takes part: grams, kJ/(kg K) and its temperature. */
  bowl?: { grams: number; heat: number; celsius: number }
  /** The room's share by the way of mixing, kJ/(K kg of flour). */
  roomHeat: number
  /** Moisture of a flour in % where its bag says. */
  moistureOf?: (flour: Ingredient) => number | undefined
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
 * room's), every other ingredient at its own (else the room's), the bowl if it counts, and the room's own share. Water that
 * has a temperature of its own (a second addition) counts at that, as long as there is other water to set.
 */
export function mixBodies(formula: Formula, temperatures: MixTemperatures): MixBodies {
  const views = formulaViews(formula)
  const { flourCelsius, roomCelsius, bowl, roomHeat, moistureOf } = temperatures
  const rows = views.finalDough.rows.flatMap((row, index) => {
    const one = formula.ingredients[index]
    return one && row.grams > 0 ? [{ one, grams: row.grams }] : []
  })
  const waters = rows.filter(({ one }) => one.kind === 'water')
  const anyOpen = waters.some(({ one }) => one.celsius === undefined)
  const isSought = (one: Ingredient) =>
    one.kind === 'water' && (one.celsius === undefined || !anyOpen)
  const final = rows.flatMap(({ one, grams }): HeatPart[] => {
    if (isSought(one)) return []
    const isFlour = one.kind === 'flour'
    const celsius = one.celsius ?? (isFlour ? flourCelsius : roomCelsius)
    const what = isFlour ? 'flour' : one.kind === 'water' ? 'water' : 'ingredient'
    return [part(what, one.name, grams, specificHeat(one), celsius)]
  })
  const ahead = views.preferments.map((view, index) => {
    const celsius = formula.preferments[index]?.celsius ?? roomCelsius
    return part('preferment', view.name, view.totalGrams, prefermentHeat(formula, view), celsius)
  })
  const bowls =
    bowl && bowl.grams > 0 ? [part('bowl', '', bowl.grams, bowl.heat, bowl.celsius)] : []
  const roomShare = Math.max(0, bowls.length > 0 ? roomHeat - bowlInRoomHeat : roomHeat)
  return {
    parts: [...final, ...ahead, ...bowls],
    waterGrams: waters.reduce((sum, { one, grams }) => sum + (isSought(one) ? grams : 0), 0),
    wettingKilojoules: rows.reduce(
      (sum, { one, grams }) =>
        sum + (one.kind === 'flour' ? (grams / 1000) * wettingHeat(moistureOf?.(one)) : 0),
      0,
    ),
    flourGrams: views.flourGrams,
    room: { kilojoulesPerKelvin: (views.flourGrams / 1000) * roomShare, celsius: roomCelsius },
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
