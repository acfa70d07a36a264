/** Specific heat of water, kJ/(kg K), at kitchen temperatures. */
export const waterHeat = 4.186
/** Flour at about 13 % moisture, kJ/(kg K): 1.7 to 1.9, from memory. */
export const flourHeat = 1.75
/** Ice, kJ/(kg K) (seen). */
export const iceHeat = 2.1
/** Heat to melt ice, kJ/kg (seen). */
export const meltingHeat = 334
/** Heat that dry flour gives when it is wetted, kJ/kg of flour at 11 to 12 % moisture: 6.5 BTU/lb (seen, Bakers' Dictionary). */
export const wettingHeat = 15.1

/** Dry matter of other ingredients, kJ/(kg K), textbook values from memory: fat 2.0, salt 0.86, sugars and the like 1.4. */
export const dryHeat = { fat: 2, salt: 0.86, yeast: 1.75, liquid: 1.6, other: 1.4 } as const

/**
 * Mixing work where neither the plan nor the mixer says: kJ per kg of flour. Stated defaults, common practice without a
 * source: by hand 1 (under 0.3 °C at 65 %), by machine 10 (about 2 °C). One watt-hour per kg of flour is 3.6.
 */
export const defaultWork = { hand: 1, machine: 10 } as const
