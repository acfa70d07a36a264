import { fileURLToPath } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { build } from 'vite'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { type StartedHub, startedHub } from '../hub/started-hub.ts'
import { outDir } from './server.ts'
import { openBrowser, visit } from './visit.ts'

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))
const certificate = {
  cert: at('../hub/certificate/of-the-tests.pem'),
  key: at('../hub/certificate/of-the-tests-key.pem'),
}

let hub: StartedHub
let browser: Browser

describe.skipIf(!findServer())('the app beside a hub', () => {
  beforeAll(async () => {
    hub = await startedHub({ app: outDir, lan: '127.0.0.2', certificate })
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser?.close()
    await hub?.end()
  })

  test('opens a table from its page by the hub’s code under its own policy, and reaches it over https too', async () => {
    const { here, there } = hub.hub
    const network = (there ?? '').split('#')[0] ?? ''
    const own = await visit(browser, here, { ignoreHTTPSErrors: true })
    await own.page.goto(here.split('#')[0] ?? '')
    await own.page.evaluate(await scriptOf('./hub-in-page.ts'))
    const came = await own.page.evaluate(`HubInPage.openedFromPage(${JSON.stringify(here)})`)
    expect(came).toEqual({ ok: true, page: network, took: 'B' })
    expect(await answerOf(own.page, 'wss://elsewhere.test/')).toBe('connect-src')
    await own.page.goto(network)
    expect(await answerOf(own.page, network.replace('https', 'wss'))).toMatch(/^INFO /)
  })
})

/** What an address says first, or the directive of the page's policy that keeps it from there. */
const answerOf = (page: Page, address: string) =>
  page.evaluate(
    (to) =>
      new Promise<string>((done) => {
        document.addEventListener('securitypolicyviolation', (event) => {
          done(event.effectiveDirective)
        })
        const socket = new WebSocket(to)
        socket.binaryType = 'arraybuffer'
        socket.onmessage = ({ data }) => done(new TextDecoder().decode(data))
      }),
    address,
  )

/** A file of the project with all it needs, as one script for a page. */
async function scriptOf(entry: string): Promise<string> {
  const built = await build({
    ...{ configFile: false, logLevel: 'silent' },
    resolve: { alias: { '@': at('../../src') } },
    build: {
      ...{ write: false, minify: false },
      lib: { entry: at(entry), formats: ['iife'], name: 'HubInPage' },
    },
  })
  const [output] = [built].flat()
  if (!output || !('output' in output)) throw new Error('nothing was built')
  return `${output.output[0].code}; globalThis.HubInPage = HubInPage`
}
