import { createAccount } from '@nats-io/nkeys'
import { expect, test } from 'vitest'
import { policyWith } from '@/serving/content-policy.ts'
import { seedOf } from '@/table/claims.ts'
import { hubCodeText, messagesAt, reachOf, readHubCode } from '@/table/hub-code.ts'

const code = {
  page: 'http://192.0.2.7:4173/',
  account: createAccount().getPublicKey(),
  seed: seedOf(createAccount()),
}
const text = hubCodeText(code)

test('a hub’s code reads as it was written, white space of a terminal in it or not', () => {
  expect(readHubCode(text)).toEqual({ ok: true, code })
  const broken = ` ${text.slice(0, 60)}\n${text.slice(60)}\n`
  expect(readHubCode(broken)).toEqual({ ok: true, code })
  const bare = text.replace('4173/', '4173')
  expect(readHubCode(bare)).toEqual({ ok: true, code })
})

test('an address alone, a word and a code with any sign changed are told apart', () => {
  expect(readHubCode('kitchen')).toEqual({ ok: false, reason: 'no-address' })
  expect(readHubCode('')).toEqual({ ok: false, reason: 'no-address' })
  expect(readHubCode('javascript:alert(1)#/hub/A.S')).toEqual({ ok: false, reason: 'no-address' })
  expect(readHubCode('http://192.0.2.7:4173/')).toEqual({ ok: false, reason: 'no-code' })
  const from = text.indexOf('#/hub/') + 6
  for (let at = from; at < text.length; at += 1) {
    const changed = `${text.slice(0, at)}${text[at] === 'B' ? 'C' : 'B'}${text.slice(at + 1)}`
    expect(readHubCode(changed)).toEqual({ ok: false, reason: 'damaged' })
    expect(readHubCode(text.slice(0, at)).ok).toBe(false)
  }
})

test('a page reaches the hub it came from and those its policy names; from https no plain one', () => {
  const page = 'https://hub.test/'
  expect(messagesAt(page)).toBe('wss://hub.test/')
  const from = (origin: string, hubs = '') => ({ origin, policy: policyWith(hubs) })
  expect(reachOf(page, from('https://hub.test'))).toEqual({ ok: true })
  expect(reachOf(page, from('https://files.test'))).toEqual({ ok: false, reason: 'other-host' })
  expect(reachOf(page, from('https://files.test', 'wss://hub.test'))).toEqual({ ok: true })
  expect(reachOf(page, { origin: 'http://localhost:5173', policy: null })).toEqual({ ok: true })
  const plain = 'http://192.0.2.7:4173/'
  expect(reachOf(plain, from('https://files.test', 'ws://192.0.2.7:4173'))).toEqual({
    ok: false,
    reason: 'needs-https',
  })
  expect(() => policyWith('wss://hub.test/path')).toThrow('EVENHAND_HUBS')
  expect(() => policyWith("*; script-src 'unsafe-inline'")).toThrow('EVENHAND_HUBS')
})
