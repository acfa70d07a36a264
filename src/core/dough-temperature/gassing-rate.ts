/** A range of the factor by which ten degrees speed the gas up: 2.1, and from 1.8 to 2.6 in what was seen. */
export const gassingQ10 = { least: 1.8, usual: 2.1, most: 2.6 } as const

/** Baker's yeast in dough: asked between these, °C, and nowhere else. Not for sourdough. */
export const gassingCelsius = { least: 15, most: 34 } as const

/**
 * How fast dough gasses at a temperature against another: Q10^((T − T₀)/10). At 2.1 a degree is 7.7 % near 24 °C. Seen: 10 % a
 * degree in a trade magazine; doubles in 9.4 °C in a bakers' forum; halves its time in 5 °C; 10 to 15 minutes off two hours for
 * 2 to 3 °F. Null outside 15 to 34 °C.
 */
export function gassingRate(
  celsius: number,
  againstCelsius: number,
  q10: number = gassingQ10.usual,
): number | null {
  const { least, most } = gassingCelsius
  if (Math.min(celsius, againstCelsius) < least || Math.max(celsius, againstCelsius) > most)
    return null
  return q10 ** ((celsius - againstCelsius) / 10)
}
