import * as z from 'zod/mini'

/** An opaque identity: made once by whoever creates the record, never read for meaning. */
export const idShape = z.string().check(z.regex(/^[A-Za-z0-9_-]{1,64}$/))
export type Id = z.infer<typeof idShape>
