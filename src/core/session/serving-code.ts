import * as z from 'zod/mini'

/** A three-digit code of a serving, a sample of a set or a ticket, 100 to 999: it tells nothing of what lies under it. */
export const servingCodeShape = z.string().check(z.regex(/^[1-9][0-9]{2}$/))
