/** The way of drawing in use: goes up by one whenever the same seed would deal something else. Kept with what was dealt. */
export const drawVersion = 4
