import * as z from 'zod/mini'
import { checked } from './checked.ts'
import type { Store } from './store.ts'

const draftShape = z.strictObject({
  key: z.string().check(z.minLength(1), z.maxLength(300)),
  values: z.record(z.string(), z.string()),
})

/** Keeps what was typed but not finished, as it was typed. */
export async function keepDraft(
  store: Store,
  key: string,
  values: Record<string, string>,
): Promise<void> {
  await store.drafts.put(checked(draftShape, { key, values }))
}
