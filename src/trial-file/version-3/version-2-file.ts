import * as z from 'zod/mini'

const step = z.looseObject({ toleranceSeconds: z.number() })
const plan = z.looseObject({ steps: z.array(step) })

/**
 * Of a trial file of version 2 what the step to version 3 reads. Frozen: never edited again, whatever becomes of the records. All else
 * is as it is now, and is checked with the outcome.
 */
export const version2File = z.looseObject({
  format: z.literal('evenhand-trial'),
  version: z.literal(2),
  plans: z.array(plan),
})

export type Version2Plan = z.infer<typeof plan>
