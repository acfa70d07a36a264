import * as z from 'zod/mini'

/** A tonne: the largest mass. */
export const mostGrams = 1e6

/** A mass in grams, 0 to a tonne. */
export const gramsShape = z.number().check(z.gte(0), z.lte(mostGrams))

/** A temperature in degrees Celsius, from the coldest freezer to the hottest oven. */
export const celsiusShape = z.number().check(z.gte(-80), z.lte(700))

/** A baker's percentage: of flour mass, so it may pass 100. */
export const percentShape = z.number().check(z.gte(0), z.lte(1e4))

/** A share of a whole, 0 to 100. */
export const shareShape = z.number().check(z.gte(0), z.lte(100))

/** A duration in seconds, up to sixty days. */
export const secondsShape = z.number().check(z.gte(0), z.lte(60 * 86_400))

/** Past this no number of an answer can be reckoned with: its square, and a sum of such, must still be one. As in tables of scores. */
const mostAnswered = 1e15

/** A number that somebody answered or measured, in whatever unit the response has. */
export const answeredShape = z.number().check(z.gte(-mostAnswered), z.lte(mostAnswered))
