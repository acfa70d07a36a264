import type { Formula } from '@/core/formula/formula-record.ts'
import type { YeastForm } from '@/core/formula/yeast-conversion.ts'

export type Leaven = YeastForm | 'starter'
export type YeastAdded = 'with-flour' | 'in-water' | 'bloomed'

export interface WaterLimits {
  leaven: Leaven | null
  added: YeastAdded
  leastCelsius: number
  mostCelsius: number
}

/**
 * The dough's water between these is taken to do the yeast no harm. Instant yeast in the flour stands hot water best (49 to
 * 54 °C for dry yeast in part of the flour seen; packets' words for the rest from memory). Active dry wants 35 to 43 °C only for
 * the little water it is bloomed in; the dough's own may be cooler, and never above 43 (seen). Fresh yeast bears about 35
 * (seen). The maker's packet has the last word.
 */
const limits: Readonly<Record<Leaven, readonly [YeastAdded, number, number]>> = {
  instant: ['with-flour', 2, 50],
  'active-dry': ['bloomed', 2, 43],
  fresh: ['in-water', 5, 35],
  starter: ['in-water', 5, 38],
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

/** Coldest and hottest advisable water for a leaven, added as it usually is. */
export function waterLimits(leaven: Leaven | null): WaterLimits {
  if (leaven === null) return { ...noLeaven, added: 'in-water' }
  const [added, leastCelsius, mostCelsius] = limits[leaven]
  return { leaven, added, leastCelsius, mostCelsius }
}

/** How far a water temperature lies outside the limits: below zero colder, above zero hotter, 0 inside. */
export function pastLimits(celsius: number, { leastCelsius, mostCelsius }: WaterLimits): number {
  if (celsius < leastCelsius) return celsius - leastCelsius
  return celsius > mostCelsius ? celsius - mostCelsius : 0
}
