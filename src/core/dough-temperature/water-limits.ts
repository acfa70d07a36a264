import type { Formula } from '@/core/formula/formula-record.ts'
import type { YeastForm } from '@/core/formula/yeast-conversion.ts'

export type Leaven = YeastForm | 'starter'
export type YeastAdded = 'with-flour' | 'in-water'

export interface WaterLimits {
  leaven: Leaven | null
  added: YeastAdded
  leastCelsius: number
  mostCelsius: number
}

/**
 * Water between these is taken to do the yeast no harm. Common practice and packets' usual words, from memory, no source:
 * instant yeast in the flour stands hot water best and suffers when cold water meets it bare; active dry wants warm water
 * to come apart; fresh yeast and starters want neither. The maker's packet has the last word.
 */
const limits: Readonly<Record<Leaven, Readonly<Record<YeastAdded, readonly [number, number]>>>> = {
  instant: { 'with-flour': [2, 50], 'in-water': [20, 43] },
  'active-dry': { 'with-flour': [15, 50], 'in-water': [35, 43] },
  fresh: { 'with-flour': [2, 40], 'in-water': [5, 38] },
  starter: { 'with-flour': [2, 40], 'in-water': [5, 38] },
}

/** Without any leaven: liquid water a hand can bear. */
const noLeaven = { leaven: null, leastCelsius: 0.5, mostCelsius: 60 }

/** What leavens a formula: its yeast with most weight, else a starter, else nothing. */
export function leavenOf(formula: Formula): Leaven | null {
  const yeasts = formula.ingredients.filter(({ kind, percent }) => kind === 'yeast' && percent > 0)
  const [most] = yeasts.toSorted((a, b) => b.percent - a.percent)
  if (most) return most.yeastForm ?? 'instant'
  return formula.preferments.some(({ kind }) => kind === 'starter') ? 'starter' : null
}

/** How a leaven usually goes in: instant yeast with the flour, everything else in the water. */
function usuallyAdded(leaven: Leaven | null): YeastAdded {
  return leaven === 'instant' ? 'with-flour' : 'in-water'
}

/** Coldest and hottest advisable water for a leaven and how it is added. */
export function waterLimits(
  leaven: Leaven | null,
  added: YeastAdded = usuallyAdded(leaven),
): WaterLimits {
  if (leaven === null) return { ...noLeaven, added }
  const [leastCelsius, mostCelsius] = limits[leaven][added]
  return { leaven, added, leastCelsius, mostCelsius }
}

/** How far a water temperature lies outside the limits: below zero colder, above zero hotter, 0 inside. */
export function pastLimits(celsius: number, { leastCelsius, mostCelsius }: WaterLimits): number {
  if (celsius < leastCelsius) return celsius - leastCelsius
  return celsius > mostCelsius ? celsius - mostCelsius : 0
}
