import * as z from 'zod/mini'

/** A public key of an account or a login, as the message server writes it. */
const accountShape = z.string().check(z.regex(/^A[A-Z2-7]{55}$/))
const userShape = z.string().check(z.regex(/^U[A-Z2-7]{55}$/))

/** What is told to a hub of a new table: public keys alone. */
export const tableKeysShape = z.strictObject({
  accounts: z.strictObject({ owner: accountShape, work: accountShape, tasters: accountShape }),
  signers: z.strictObject({
    owner: accountShape,
    bench: accountShape,
    oven: accountShape,
    key: accountShape,
    taster: accountShape,
    watch: accountShape,
  }),
})
export type TableKeys = z.infer<typeof tableKeysShape>

/** What the owner of a table may ask for later, signed with the owner's key of that table. */
export const ownersAskShape = z.discriminatedUnion('ask', [
  z.strictObject({ ask: z.literal('close'), owner: accountShape }),
  z.strictObject({
    ask: z.literal('revoke'),
    owner: accountShape,
    from: z.enum(['work', 'tasters']),
    user: userShape,
  }),
])
export type OwnersAsk = z.infer<typeof ownersAskShape>

/**
 * Why a hub does not do it. `full`: it holds as many tables as it may. `taken`: such an account is there already. `not-yours`:
 * nothing of that table is signed so, or the signature is older than a few minutes. `not-understood`: not an ask that it knows.
 * `hub-failed`: its message server did not take it.
 */
export const deskRefusals = ['full', 'taken', 'not-yours', 'not-understood', 'hub-failed'] as const
export type DeskRefusal = (typeof deskRefusals)[number]

export const deskAnswerShape = z.discriminatedUnion('ok', [
  z.strictObject({
    ok: z.literal(true),
    /** Address of the app beside the hub, which guests open. */
    page: z.string(),
    /** In how many places it keeps each stream: 1, or 3 where three servers stand together. */
    replicas: z.number().check(z.int(), z.gte(1), z.lte(5)),
  }),
  z.strictObject({ ok: z.literal(false), reason: z.enum(deskRefusals) }),
])
export type DeskAnswer = z.infer<typeof deskAnswerShape>

/** Subjects of the desk, where a hub is asked. */
export const deskSubjects = { open: 'desk.open', owners: 'desk.owners' } as const
