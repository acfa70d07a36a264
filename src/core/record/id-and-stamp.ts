import * as z from 'zod/mini'

/** A moment in UTC milliseconds. */
export const atShape = z.number().check(z.int(), z.gte(0), z.lte(8.64e15))

/** The IANA time zone a moment was lived in, such as Europe/Rome, kept beside it. */
export const zoneShape = z.string().check(z.minLength(1), z.maxLength(64))

/** An opaque identity: made once by whoever creates the record, never read for meaning. */
export const idShape = z.string().check(z.regex(/^[A-Za-z0-9_-]{1,64}$/))
export type Id = z.infer<typeof idShape>
