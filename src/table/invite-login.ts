import { createUser } from '@nats-io/nkeys'
import { keyOfSeed, seedOf, signedClaim } from './claims.ts'
import type { Part } from './subjects.ts'

/** What a hub gives to the owner of a table: where it is, and the keys that may let others in. It is kept like a password. */
export interface Ticket {
  /** Where the owner's messages go, such as wss://hub.example/: as the owner's own page reaches the hub. */
  address: string
  /** Address of the app beside the hub, which guests open. Their messages go to `messagesAt(page)`, which may be another address. */
  page: string
  /** In how many places the hub keeps each stream: 1, or 3 where three servers stand together. */
  replicas: number
  /** Public keys of the table's three accounts: the owner's with the streams, that of the work, that of the tasters. */
  accounts: { owner: string; work: string; tasters: string }
  /** Seeds of the keys that may sign a login, one for the owner and one for each part: the server holds each to its part. */
  seeds: Readonly<Record<'owner' | Part, string>>
}

/** A login that the hub lets in. */
export interface Login {
  name: string
  claim: string
  seed: string
}

/**
 * A login for one part of a table, signed by its owner's device; the hub is not asked. What it may do stands with the key that
 * signs, not in the login: one that claims more is refused. `until` is in seconds since 1970.
 */
export function inviteLogin(
  ticket: Ticket,
  part: 'owner' | Part,
  { name, now, until }: { name: string; now: number; until?: number },
): Login {
  const user = createUser()
  const account =
    part === 'owner'
      ? ticket.accounts.owner
      : part === 'taster'
        ? ticket.accounts.tasters
        : ticket.accounts.work
  const claim = signedClaim(
    {
      name,
      subject: user.getPublicKey(),
      issuedAt: now,
      ...(until === undefined ? {} : { expiresAt: until }),
      says: {
        ...{ type: 'user', issuer_account: account, pub: {}, sub: {} },
        // What a part may do stands with its key; the owner's key holds nobody to anything, so its login says its limits.
        ...(part === 'owner' ? { subs: -1, data: -1, payload: -1 } : {}),
      },
    },
    keyOfSeed(ticket.seeds[part]),
  )
  return { name, claim, seed: seedOf(user) }
}
