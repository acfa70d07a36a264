/** Specific heat of water, kJ/(kg K), at kitchen temperatures. */
export const waterHeat = 4.186
/** Flour at about 13 % moisture, kJ/(kg K): 1.80 to 1.88 in a textbook's table (seen), 1.75 as the hand-mixed doughs were fitted with. */
export const flourHeat = 1.75
/** Ice, kJ/(kg K) (seen). */
export const iceHeat = 2.1
/** Heat to melt ice, kJ/kg (seen). */
export const meltingHeat = 334
/** Dry matter of other ingredients, kJ/(kg K), textbook values from memory: fat 2.0, salt 0.88, sugars and the like 1.4. */
export const dryHeat = { fat: 2, salt: 0.88, yeast: 1.75, liquid: 1.6, other: 1.4 } as const
