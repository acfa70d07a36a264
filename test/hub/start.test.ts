import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:https'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { WebSocket } from 'ws'
import { askedHub } from '@/hub/asked-hub.ts'
import { certificateOf } from '@/hub/certificate.ts'
import { findServer } from '@/hub/find-server.ts'
import { troubleText } from '@/hub/hub-trouble.ts'
import { forgetTable, keptTables } from '@/hub/kept-tables.ts'
import { connectionFrom } from '@/hub/own-connection.ts'
import { type HubAsked, startHub } from '@/hub/start-hub.ts'
import { readHubCode } from '@/table/hub-code.ts'
import { openTable } from '@/table/hub-desk.ts'
import { nowSeconds } from './running-hub.ts'
import { askedForTest, type StartedHub, startedHub } from './started-hub.ts'

const pem = (name: string) => fileURLToPath(new URL(`certificate/${name}.pem`, import.meta.url))
// Made for these tests alone, for kitchen.test, 127.0.0.1 and 127.0.0.2, until 2126.
const certificate = { cert: pem('of-the-tests'), key: pem('of-the-tests-key') }

const quiet = { again: () => undefined, gone: () => undefined, troubled: () => undefined }
const ends: (() => void | Promise<void>)[] = []
const asked = async (more: Partial<HubAsked>) => {
  const hub = await askedForTest(more)
  ends.push(() => rmSync(hub.folder, { recursive: true, force: true }))
  return hub
}
const troubleOf = async (hub: HubAsked) => {
  const answer = await startHub(hub, quiet)
  if (answer.ok) await answer.hub.stop()
  return answer.ok ? 'it started' : troubleText(answer.trouble)
}

let first: StartedHub

describe.skipIf(!findServer())('a hub in the network', () => {
  beforeAll(async () => {
    first = await startedHub({ lan: '127.0.0.2', certificate, also: ['https://evenhand.test'] })
  })
  afterAll(async () => {
    for (const end of ends) await end()
    await first?.end()
  })

  test('another that cannot start says why and what to do', async () => {
    const { port, folder } = first.asked
    const hub = await asked({})
    const file = join(hub.folder, 'a-file')
    writeFileSync(file, '')
    mkdirSync(join(hub.folder, 'other'))
    writeFileSync(join(hub.folder, 'other', 'keys.json'), '{"version":1}')
    const troubles = [
      await troubleOf({ ...hub, port }),
      await troubleOf({ ...hub, lan: '198.51.100.7' }),
      await troubleOf({ ...hub, app: 'no-such-folder' }),
      await troubleOf({ ...hub, folder: join(file, 'in-it') }),
      await troubleOf({ ...hub, folder: join(hub.folder, 'other') }),
      await troubleOf({ ...hub, folder }),
    ]
    expect(troubles).toEqual([
      expect.stringContaining(`Port ${port} of 127.0.0.1 is in use`),
      expect.stringContaining('198.51.100.7 is no address of this machine'),
      expect.stringContaining('npm run build'),
      expect.stringContaining('cannot be written'),
      expect.stringContaining('does not hold the keys of a hub'),
      expect.stringContaining('already runs'),
    ])
  })

  test('lets a named page connect and no other, and takes what is no WebSocket for none', async () => {
    const { code } = first
    const open = (origin: string) =>
      openTable((to, login) => connectionFrom(origin, to, login), code, nowSeconds())
    expect((await open('https://evenhand.test')).ok).toBe(true)
    await expect(open('http://evenhand.test')).rejects.toThrow()
    expect((await fetch(code.page)).status).toBe(404)
  })

  test('speaks https and wss there, plain on this machine, and keeps its code over a restart', async () => {
    const there = readHubCode(first.hub.there ?? '')
    if (!there.ok) throw new Error(there.reason)
    expect(there.code.page).toBe(`https://127.0.0.2:${first.asked.port}/`)
    const status = await new Promise((done, fail) => {
      request(there.code.page, { rejectUnauthorized: false }, (answer) => {
        answer.resume()
        done(answer.statusCode)
      })
        .on('error', fail)
        .end()
    })
    expect(status).toBe(404)
    const socket = new WebSocket(there.code.page.replace('https', 'wss'), {
      ...{ origin: new URL(there.code.page).origin, rejectUnauthorized: false },
    })
    const greeting = await new Promise<string>((done, fail) => {
      socket.once('message', (data) => done(String(data)))
      socket.once('error', fail)
    })
    expect(greeting).toMatch(/^INFO \{/)
    socket.terminate()
    // Guests are told the address of the network, whoever asked from this machine.
    const answer = await openTable(first.connect, first.code, nowSeconds())
    expect(answer).toMatchObject({ ok: true, ticket: { page: there.code.page } })
    const { here } = first.hub
    await first.hub.stop()
    const { folder } = first.asked
    const [forgotten, ...others] = keptTables(folder)
    if (!forgotten) throw new Error('no table')
    forgetTable(folder, forgotten)
    expect(keptTables(folder)).toEqual(others)
    const again = await startHub(first.asked, quiet)
    if (!again.ok) throw new Error(troubleText(again.trouble))
    ends.unshift(again.hub.stop)
    expect(again.hub.here).toBe(here)
    // Two were open; the one that was taken off is let in no more, its place is free again.
    expect(await again.hub.tables()).toBe(1)
  })
})

test('a certificate is held against its key, its day and the name people type', () => {
  const now = new Date('2030-01-01')
  const reasonOf = (files: typeof certificate, host: string, at = now) => {
    const read = certificateOf(files, host, at)
    return read.ok ? 'fits' : `${read.reason}: ${troubleText(read)}`
  }
  expect(reasonOf(certificate, 'kitchen.test')).toBe('fits')
  expect(reasonOf(certificate, '127.0.0.1')).toBe('fits')
  expect(reasonOf(certificate, 'other.test')).toMatch(/^other-name: .*DNS:kitchen\.test/)
  expect(reasonOf(certificate, 'kitchen.test', new Date('2200-01-01'))).toMatch(/^ran-out: .*2126/)
  expect(reasonOf({ ...certificate, key: pem('another-key') }, 'kitchen.test')).toMatch(
    /^not-a-pair/,
  )
  expect(reasonOf({ ...certificate, cert: 'nowhere.pem' }, 'kitchen.test')).toMatch(/^cannot-read/)
})

test('the words of the command are read with the mend for each that does not read', () => {
  const why = (...words: string[]) => {
    const read = askedHub(words, {})
    return read.ok ? read.asked : read.help ? 'help' : read.why
  }
  expect(why()).toMatchObject({ port: 4173, lan: null, app: 'dist', mostTables: 60 })
  expect(why('--help')).toBe('help')
  expect(why('--port', 'x')).toContain('--port x is not a port')
  expect(why('--tables', '0')).toContain('--tables 0')
  expect(why('--cert', 'a.pem')).toContain('go together')
  expect(why('--cert', 'a.pem', '--key', 'k.pem')).toContain('--lan ADDRESS')
  expect(why('--page', 'kitchen')).toContain('is no address')
  expect(why('--also', 'kitchen')).toContain('is no page')
  expect(why('--beside', 'a:1')).toContain('--others')
  expect(why('--beside', 'a:1', '--others', 'b:1,c:1')).toContain('HUB_PASSWORD')
  expect(why('--floor', '3')).toContain('--floor')
  expect(askedHub(['--forget', 'ABCD2345'], {})).toMatchObject({
    act: { kind: 'forget', name: 'ABCD2345' },
  })
  expect(askedHub(['--list'], {})).toMatchObject({ act: { kind: 'list' } })
  expect(why('--page', 'https://kitchen.test', '--lan', '192.0.2.7')).toMatchObject({
    page: 'https://kitchen.test/',
    lan: '192.0.2.7',
  })
})
