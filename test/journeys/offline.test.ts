import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { type PreviewServer, preview } from 'vite'
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest'
import { fromMenu } from './from-menu.ts'
import { readIn } from './read-in.ts'
import { sealNext } from './seal-next.ts'
import { outDir } from './server.ts'
import { tastingTrial } from './tasting-trial.ts'
import { openBrowser } from './visit.ts'

let browser: Browser
let folder: string
let server: PreviewServer
let address: string

async function serve(port = 0): Promise<void> {
  server = await preview({
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { port, host: '127.0.0.1' },
  })
  const bound = server.httpServer.address()
  if (bound === null || typeof bound === 'string') throw new Error('the server has no port')
  address = `http://127.0.0.1:${bound.port}/`
}

/** No server any more, not even for a browser that keeps its connection. */
async function stopServing(): Promise<void> {
  if ('closeAllConnections' in server.httpServer) server.httpServer.closeAllConnections()
  await server.close()
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'evenhand-offline-'))
  cpSync(outDir, folder, { recursive: true })
  browser = await openBrowser()
  await serve()
})
afterAll(async () => {
  await browser.close()
  await stopServing()
  rmSync(folder, { recursive: true })
})

/** A first visit to the notebook page, until the browser keeps the program. */
async function firstVisit(): Promise<{ context: BrowserContext; page: Page; troubles: string[] }> {
  const context = await browser.newContext({ reducedMotion: 'reduce' })
  const page = await context.newPage()
  const troubles: string[] = []
  page.on('console', (line) => {
    if (line.type() === 'error' || line.type() === 'warning') troubles.push(line.text())
  })
  page.on('pageerror', (error) => troubles.push(String(error)))
  await page.goto(address)
  await page.getByRole('heading', { level: 1, name: 'Notebook' }).waitFor()
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (!navigator.serviceWorker.controller)
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      )
  })
  return { context, page, troubles }
}

/** Goes to a place of the program that was never opened before. */
async function open(page: Page, hash: string, heading: string): Promise<void> {
  await page.goto(`${address}${hash}`)
  await page.getByRole('heading', { level: 1, name: heading, exact: true }).waitFor()
}

test('first visit to the notebook alone, then no server: a trial day from sample to report, and after a reload', async () => {
  const { context, page, troubles } = await firstVisit()
  await stopServing()
  onTestFinished(async () => {
    await context.close()
    await serve(Number(new URL(address).port))
  })
  await page.getByRole('button', { name: /flatbread/ }).click()
  await page.waitForURL(/#\/trial\/.*bench$/)
  const trial = page
    .url()
    .slice(address.length)
    .replace(/bench$/, '')
  await page
    .getByRole('button', { name: 'Note', exact: true })
    .or(page.getByRole('button', { name: /^More/ }))
    .first()
    .waitFor()
  await open(page, `${trial}plan`, 'Plan')
  const question = page.getByLabel('Question', { exact: true })
  const part = page.getByRole('button', { name: /^The question/ })
  await part.click()
  await question.waitFor()
  await page.reload()
  await part.or(question).first().waitFor()
  if (!(await question.isVisible())) await part.click()
  await question.waitFor()
  await open(page, `${trial}tasting`, 'Who is tasting?')
  await open(page, '#/kitchen', 'Kitchen')
  await open(page, '#/about', 'About Evenhand')
  await page.getByText('every place opens without a network').waitFor()
  await open(page, '#/scores', 'Scores from elsewhere')
  await page.goto(address)
  await page.getByRole('button', { name: /focaccia/ }).click()
  await page.waitForURL(/#\/trial\/.*findings$/)
  await page.getByRole('list', { name: 'How far this carries' }).waitFor()
  await page.goto(page.url().replace(/findings$/, 'report'))
  await page.getByRole('heading', { level: 1, name: 'Report', exact: true }).waitFor()
  await page.getByRole('button', { name: 'Trial file' }).waitFor()
  await page.goto(address)
  const saving = page.waitForEvent('download')
  await fromMenu(page, 'Back up all')
  expect(readFileSync(await (await saving).path()).length).toBeGreaterThan(10_000)
  expect(troubles).toEqual([])
})

test('first visit to the notebook alone, then no server: a press, a reload, every ballot and the unsealing of a day', async () => {
  const { context, page, troubles } = await firstVisit()
  await stopServing()
  onTestFinished(async () => {
    await context.close()
    await serve(Number(new URL(address).port))
  })
  const tasters = ['club-1', 'club-2'].map((tasterId) => ({ tasterId, knows: false }))
  const whole = tastingTrial({ tasters })
  await readIn(page, address, whole)
  const trial = `#/trial/${whole.trial.id}/`
  await open(page, `${trial}bench`, 'Bench')
  await page.getByRole('button', { name: 'Begin', exact: true }).click()
  const undo = page.getByRole('button', { name: /^Undo .*begun/ })
  await undo.waitFor()
  await page.reload()
  await undo.waitFor()
  await open(page, `${trial}tasting`, 'Who is tasting?')
  const orders = whole.sessions.flatMap(({ dealt }) => dealt.tasterOrders)
  for (const _ of orders.flatMap(({ servingIds }) => servingIds)) await sealNext(page)
  await page.getByRole('button', { name: 'Hand the device on' }).click()
  await page.getByRole('button', { name: 'Unseal the codes' }).click()
  await page.getByRole('button', { name: 'Unseal for good' }).click()
  await page.getByText('The codes are open.').waitFor()
  await page.reload()
  await open(page, `${trial}findings`, 'Findings')
  await page.getByRole('button', { name: 'Look now, and record it' }).click()
  await page.getByRole('list', { name: 'How far this carries' }).waitFor()
  expect(troubles).toEqual([])
})

test('a newer version is offered and waits: the old one goes on until it is taken, with parts that the server no longer has', async () => {
  const { context, page } = await firstVisit()
  const index = join(folder, 'index.html')
  const before = readFileSync(index, 'utf8')
  const sw = join(folder, 'sw.js')
  writeFileSync(index, before.replace('<title>Evenhand</title>', '<title>Evenhand, newer</title>'))
  // What a build does: the list of files, by which the browser tells that there is something newer, changes with them.
  const listed = readFileSync(sw, 'utf8')
  const assets = join(folder, 'assets')
  const kitchen = readdirSync(assets).find((file) => /^kitchen-place-.*\.js$/.test(file)) ?? ''
  const renamed = kitchen.replace(/\.js$/, 'z.js')
  const changed = listed
    .replace(/(url:"index\.html",revision:")\w/, '$1z')
    .replaceAll(`assets/${kitchen}`, `assets/${renamed}`)
  expect(changed).toContain(renamed)
  writeFileSync(sw, changed)
  // The server has the newer version's files alone: a part of the old one that was never opened is nowhere but on this device.
  renameSync(join(assets, kitchen), join(assets, renamed))
  await page.reload()
  await page.getByText('A newer version is ready').waitFor()
  expect(await page.title()).not.toContain('newer')
  await page.getByRole('link', { name: 'Kitchen' }).click()
  await page.getByRole('heading', { level: 1, name: 'Kitchen' }).waitFor()
  // Where the browser is slow to hand over, the page opens as it was and offers it again.
  await expect
    .poll(
      async () => {
        const offered = page.getByRole('button', { name: 'Take it now' })
        if (await offered.isVisible()) await offered.click().catch(() => undefined)
        return page
          .evaluate(() => fetch('./').then((answer) => answer.text()))
          .catch((cause) => `opening anew: ${cause}`)
      },
      { timeout: 40_000, interval: 3000 },
    )
    .toContain('Evenhand, newer')
  await context.close()
  // Under both names, for whoever visits after this.
  cpSync(join(assets, renamed), join(assets, kitchen))
})

test('the server names the policy, lets nobody else frame the page, and answers 404 to what is no page', async () => {
  const home = await fetch(address)
  expect(home.headers.get('content-security-policy')).toContain("frame-ancestors 'self'")
  expect(home.headers.get('content-security-policy')).toContain("default-src 'none'")
  expect(home.headers.get('x-content-type-options')).toBe('nosniff')
  expect((await fetch(`${address}no/such/page`)).status).toBe(404)
  const listed = JSON.parse(readFileSync(join(folder, 'licences', 'dependencies.json'), 'utf8'))
  for (const { name, text } of listed) expect(text?.length, name).toBeGreaterThan(500)
  expect(readdirSync(join(folder, 'licences'))).toContain('workbox.txt')
})

test('it can be installed: the manifest, its icons and its pictures are there and of the sizes they say', async () => {
  const { context, page } = await firstVisit()
  const devtools = await context.newCDPSession(page)
  const { errors } = await devtools.send('Page.getAppManifest')
  expect(errors).toEqual([])
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors')
  expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([])
  const manifest = JSON.parse(readFileSync(join(folder, 'manifest.webmanifest'), 'utf8'))
  for (const { src, sizes } of [...manifest.icons, ...manifest.screenshots]) {
    const png = readFileSync(join(folder, src))
    // The size of a PNG stands in its first chunk: width at byte 16, height at byte 20 (ISO/IEC 15948, 11.2.2).
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`, src).toBe(sizes)
  }
  await context.close()
})
