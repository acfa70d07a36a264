import { createAccount, type KeyPair } from '@nats-io/nkeys'
import { seedOf } from './claims.ts'
import type { TableKeys } from './desk-asks.ts'
import type { Ticket } from './invite-login.ts'

/**
 * The keys of a new table, made on the device of whoever opens it: the public ones are told to the hub, which signs what each
 * may do; the seeds stay here, and let in whoever is invited without asking the hub.
 */
export function newTable(): { keys: TableKeys; seeds: Ticket['seeds'] } {
  const account = () => createAccount().getPublicKey()
  const signers = {
    owner: createAccount(),
    bench: createAccount(),
    oven: createAccount(),
    key: createAccount(),
    taster: createAccount(),
    watch: createAccount(),
  }
  const each = (told: (key: KeyPair) => string) => ({
    owner: told(signers.owner),
    bench: told(signers.bench),
    oven: told(signers.oven),
    key: told(signers.key),
    taster: told(signers.taster),
    watch: told(signers.watch),
  })
  return {
    keys: {
      accounts: { owner: account(), work: account(), tasters: account() },
      signers: each((key) => key.getPublicKey()),
    },
    seeds: each(seedOf),
  }
}
