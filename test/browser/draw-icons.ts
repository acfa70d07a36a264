import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { build, preview } from 'vite'
import { openBrowser } from '../journeys/visit.ts'

const folder = join('src', 'app', 'frame', 'public')
const outDir = 'dist-icons'
const mark = readFileSync(join('src', 'app', 'frame', 'icon.svg'), 'utf8')

/** The mark on paper to the edge, small enough that a round mask cuts nothing of it. */
const maskable = mark
  .replace('rx="72"', '')
  .replace('viewBox="0 0 512 512"', 'viewBox="-96 -96 704 704" style="background:#fafaf8"')

const icons = [
  { name: 'icon-192.png', size: 192, svg: mark },
  { name: 'icon-512.png', size: 512, svg: mark },
  { name: 'icon-maskable-512.png', size: 512, svg: maskable },
] as const

const shots = [
  { name: 'screenshot-wide.png', viewport: { width: 1280, height: 800 } },
  { name: 'screenshot-phone.png', viewport: { width: 390, height: 844 } },
] as const

/** Draws the icons from the mark and takes the two pictures that a browser shows before it installs the program. */
export async function run(): Promise<void> {
  mkdirSync(folder, { recursive: true })
  await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } })
  const server = await preview({
    logLevel: 'error',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
  })
  const address = server.httpServer.address()
  if (address === null || typeof address === 'string') throw new Error('the server has no port')
  const browser = await openBrowser()
  try {
    for (const { name, size, svg } of icons) {
      const page = await browser.newPage({ viewport: { width: size, height: size } })
      await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw}</style>${svg}`)
      await page.screenshot({ path: join(folder, name), omitBackground: true })
      await page.close()
    }
    for (const { name, viewport } of shots) {
      const page = await browser.newPage({ viewport, reducedMotion: 'reduce', locale: 'en-GB' })
      await page.goto(`http://127.0.0.1:${address.port}/`)
      await page.getByRole('button', { name: /focaccia/ }).click()
      await page.waitForURL(/#\/trial\/.*findings$/)
      await page.getByRole('progressbar').waitFor({ state: 'detached' })
      await page.evaluate('document.fonts.ready.then(() => true)')
      await page.waitForTimeout(1500)
      await page.screenshot({ path: join(folder, name) })
      await page.close()
    }
  } finally {
    await browser.close()
    await server.close()
  }
}
