import { createAccount } from '@nats-io/nkeys'
import { describe, expect, test } from 'vitest'
import { seedOf } from '@/table/claims.ts'
import { type Invitation, invitationLink, readInvitation } from '@/table/invitation.ts'
import { inviteLogin, type Ticket } from '@/table/invite-login.ts'
import { newLogin, partNames } from '@/table/subjects.ts'

const page = 'https://kitchen.example:4173/'
const newSeed = () => seedOf(createAccount())
const account = () => createAccount().getPublicKey()
const ticket = {
  address: 'wss://kitchen.example:4173/',
  accounts: { owner: account(), work: account(), tasters: account() },
  seeds: {
    ...{ owner: newSeed(), bench: newSeed(), oven: newSeed(), key: newSeed() },
    ...{ taster: newSeed(), watch: newSeed() },
  },
} as unknown as Ticket
const draw = () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0
const secret = crypto.getRandomValues(new Uint8Array(16))

const invited = (part: Invitation['part'], sealed = true, until?: number): Invitation => ({
  ...{ part, table: newLogin(draw), secret: sealed ? secret : null },
  login: inviteLogin(ticket, part, {
    ...{ name: newLogin(draw), now: 1_796_000_000, ...(until === undefined ? {} : { until }) },
  }),
})
const behind = (link: string) => link.split('#/join/')[1] ?? ''

describe('the link of an invitation', () => {
  test('brings back every part, sealed or not, the claim sign by sign, within what is scanned from a screen', () => {
    for (const part of partNames)
      for (const sealed of [true, false]) {
        const given = invited(part, sealed, part === 'taster' ? 1_796_040_000 : undefined)
        const link = invitationLink(page, given)
        expect(link.length).toBeLessThan(440)
        expect(readInvitation(behind(link))).toEqual({ ok: true, invitation: given })
      }
  })

  test('cut anywhere or of a later version it is refused, and never half read', () => {
    const text = behind(invitationLink(page, invited('bench')))
    for (let length = 0; length < text.length; length += 7)
      expect(readInvitation(text.slice(0, length))).toEqual({ ok: false, reason: 'damaged' })
    expect(readInvitation('not a link')).toEqual({ ok: false, reason: 'damaged' })
    expect(readInvitation(`Ag${text.slice(2)}`)).toEqual({ ok: false, reason: 'newer-version' })
  })
})
