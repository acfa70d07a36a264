import * as z from 'zod/mini'

/** The most that is counted. */
export const mostCount = 1e6

/** A whole number from 1 up. */
export const countShape = z.number().check(z.int(), z.gte(1), z.lte(mostCount))

/** A whole number from 0 up. */
export const wholeShape = z.number().check(z.int(), z.gte(0), z.lte(1e9))
