import type * as z from 'zod/mini'

/**
 * One step from a data version to the next, `to` being the newer. `oldFile` is the frozen shape of a whole trial file's
 * content before the step; it never changes again, whatever becomes of the records. Steps are appended, never edited.
 */
export interface Migration {
  to: number
  oldFile: z.ZodMiniType
  /** The content of a trial file without its kitchen: trial, plans, sessions, events, ballots, photos. */
  content: (old: Content) => Content
  kitchenThing: (old: Content) => Content
  settings: (old: Content) => Content
}

/** A record whose shape is that of some data version, checked by the frozen shape of that version. */
export type Content = Readonly<Record<string, unknown>>

/** The steps from version 1 to the present one, in order. */
export interface Chain {
  version: number
  migrations: readonly Migration[]
}

/**
 * The chain, proved whole: one step for every version above 1, numbered by one. Throws otherwise: a programmer's mistake.
 */
export function provedChain(chain: Chain): Chain {
  const wrong = chain.migrations.findIndex((step, index) => step.to !== index + 2)
  if (wrong !== -1) throw new Error(`migration ${wrong} must lead to version ${wrong + 2}`)
  if (chain.version !== chain.migrations.length + 1)
    throw new Error(`version ${chain.version} needs ${chain.version - 1} migrations`)
  return chain
}
