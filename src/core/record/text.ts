import * as z from 'zod/mini'

/** A name a person typed: at least one visible character, at most 200. */
export const nameShape = z.string().check(z.regex(/\S/), z.maxLength(200))

/** A longer note a person typed; may be empty, at most 5,000 characters. */
export const noteShape = z.string().check(z.maxLength(5000))

/** A name for where there is little room, two short lines at most: at least one visible character, at most 24. */
export const shortNameShape = z.string().check(z.regex(/\S/), z.maxLength(24))
