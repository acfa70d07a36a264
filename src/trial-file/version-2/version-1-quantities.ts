import * as z from 'zod/mini'

/* The shapes of version 1, frozen: never edited again, whatever becomes of the records. */
export const countShape = z.number().check(z.int(), z.gte(1), z.lte(1e6))

export const wholeShape = z.number().check(z.int(), z.gte(0), z.lte(1e9))

export const idShape = z.string().check(z.regex(/^[A-Za-z0-9_-]{1,64}$/))

export const gramsShape = z.number().check(z.gte(0), z.lte(1e6))

export const celsiusShape = z.number().check(z.gte(-80), z.lte(700))

export const percentShape = z.number().check(z.gte(0), z.lte(1e4))

export const shareShape = z.number().check(z.gte(0), z.lte(100))

export const secondsShape = z.number().check(z.gte(0), z.lte(60 * 86_400))

export const atShape = z.number().check(z.int(), z.gte(0), z.lte(8.64e15))

export const zoneShape = z.string().check(z.minLength(1), z.maxLength(64))

export const nameShape = z.string().check(z.regex(/\S/), z.maxLength(200))

export const noteShape = z.string().check(z.maxLength(5000))
