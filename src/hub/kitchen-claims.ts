import { createUser, type KeyPair } from '@nats-io/nkeys'
import { seedOf, signedClaim } from '@/table/claims.ts'
import { deskSubjects } from '@/table/desk-asks.ts'
import type { Login } from '@/table/invite-login.ts'
import type { KitchenKeys } from './kitchen-keys.ts'

const unlimited = { subs: -1, data: -1, payload: -1, imports: -1, exports: -1, wildcards: true }

/** What the message server is started with: its operator, its own account and that of the desk. `now` in seconds since 1970. */
export function kitchenClaims({ operator, system, desk, asker }: KitchenKeys, now: number) {
  const claim = (name: string, key: KeyPair, says: Record<string, unknown>) =>
    signedClaim({ name, subject: key.getPublicKey(), issuedAt: now, says }, operator)
  const systemId = system.getPublicKey()
  const open = { ...unlimited, conn: -1, leaf: -1 }
  return {
    operatorClaim: claim('kitchen', operator, { type: 'operator', system_account: systemId }),
    systemId,
    claims: [
      { account: systemId, claim: claim('system', system, { type: 'account', limits: open }) },
      {
        account: desk.getPublicKey(),
        claim: claim('desk', desk, {
          type: 'account',
          limits: { ...unlimited, conn: 64, leaf: 0 },
          signing_keys: [
            {
              ...{ kind: 'user_scope', key: asker.getPublicKey(), role: 'asker' },
              template: {
                pub: { allow: Object.values(deskSubjects) },
                sub: { allow: ['_INBOX.{{name()}}.>'] },
                ...{ subs: 4, data: -1, payload: 8192 },
                allowed_connection_types: ['WEBSOCKET'],
              },
            },
          ],
        }),
      },
    ],
  }
}

/** A login of the hub's own, in the account whose key signs it; it may do there what it likes. */
export function ownLogin(account: KeyPair, name: string, now: number): Login {
  const user = createUser()
  const limits = { subs: -1, data: -1, payload: -1 }
  const claim = signedClaim(
    {
      ...{ name, subject: user.getPublicKey(), issuedAt: now },
      says: { type: 'user', pub: {}, sub: {}, ...limits },
    },
    account,
  )
  return { name, claim, seed: seedOf(user) }
}
