import * as z from 'zod/mini'

/** The most that is counted. */
export const mostCount = 1e6

/** A whole number from 1 up. */
export const countShape = z.number().check(z.int(), z.gte(1), z.lte(mostCount))

/** A whole number from 0 up. */
export const wholeShape = z.number().check(z.int(), z.gte(0), z.lte(1e9))

/** A list of at most so many: what no kitchen reaches is refused by name instead of being worked on for minutes. */
export function listOf<Shape extends z.core.$ZodType>(shape: Shape, { most }: { most: number }) {
  return z.array(shape).check(z.maxLength(most))
}

/** A whole number from 1 up to what a kitchen can hold. */
export function countTo(most: number) {
  return z.number().check(z.int(), z.gte(1), z.lte(most))
}
