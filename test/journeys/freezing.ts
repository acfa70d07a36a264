import { spawn } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type Page } from 'playwright-core'
import { WebSocket } from 'ws'
import { CHROMIUM_ARGS, findChromium } from '../browser/chromium.mjs'

/** A browser of its own whose pages can be frozen as on a locked phone, and thrown away as where memory is short. */
export interface Freezing {
  /** As long as `work` lasts the page is driven; a driver keeps a page awake, so between two works there is none. */
  driven: <T>(work: (page: Page, context: BrowserContext) => Promise<T>) => Promise<T>
  freeze: () => Promise<void>
  /** The frozen page runs again. */
  resume: () => Promise<void>
  /** Ends the frozen page without a word to it; a new one stands in its place. */
  discard: () => Promise<void>
  close: () => Promise<void>
}

/** A phone's own zone and screen; without them those of this machine. */
interface Phone {
  zone: string
  width: number
  height: number
}

export async function openFreezing(phone?: Phone): Promise<Freezing> {
  const profile = await mkdtemp(join(tmpdir(), 'evenhand-frozen-'))
  const path = (await findChromium())?.path ?? chromium.executablePath()
  const own = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`]
  const screen = phone ? [`--window-size=${phone.width},${phone.height}`] : []
  const child = spawn(path, [...CHROMIUM_ARGS, ...own, ...screen, 'about:blank'], {
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, ...(phone ? { TZ: phone.zone } : {}) },
    // What is found may be a script that starts the browser: both end by their group.
    detached: true,
  })
  const gone = new Promise((resolve) => child.once('exit', resolve))
  const address = await new Promise<string>((resolve, reject) => {
    let said = ''
    child.once('error', reject)
    child.once('exit', () => reject(new Error(`the browser ended: ${said}`)))
    child.stderr.on('data', (data) => {
      said += String(data)
      const found = /listening on (ws:\S+)/.exec(said)?.[1]
      if (found) resolve(found)
    })
  })
  const protocol = `http://127.0.0.1:${new URL(address).port}/json`
  interface Answer {
    id?: number
    error?: { message: string }
  }
  /** One word of the browser's own protocol to its page. */
  const tell = async (method: string, params: object) => {
    const pages = (await (await fetch(`${protocol}/list`)).json()) as Record<string, string>[]
    const socket = new WebSocket(
      pages.find(({ type }) => type === 'page')?.webSocketDebuggerUrl ?? '',
    )
    const answer = await new Promise<Answer>((resolve, reject) => {
      socket.once('error', reject)
      socket.once('open', () => socket.send(JSON.stringify({ id: 1, method, params })))
      socket.on('message', (data) => {
        const heard = JSON.parse(String(data)) as Answer
        if (heard.id === 1) resolve(heard)
      })
    })
    socket.close()
    if (answer.error) throw new Error(`${method}: ${answer.error.message}`)
  }
  return {
    driven: async (work) => {
      const browser = await chromium.connectOverCDP(address)
      const [context] = browser.contexts()
      const page = context?.pages()[0]
      if (!context || !page) throw new Error('a page to drive')
      try {
        return await work(page, context)
      } finally {
        await browser.close()
      }
    },
    freeze: () => tell('Page.setWebLifecycleState', { state: 'frozen' }),
    resume: () => tell('Page.setWebLifecycleState', { state: 'active' }),
    discard: async () => {
      const pages = (await (await fetch(`${protocol}/list`)).json()) as Record<string, string>[]
      const frozen = pages.find(({ type }) => type === 'page')
      await fetch(`${protocol}/new?about:blank`, { method: 'PUT' })
      await fetch(`${protocol}/close/${frozen?.id}`)
    },
    close: async () => {
      if (child.pid !== undefined && child.exitCode === null) process.kill(-child.pid)
      await gone
      await rm(profile, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}
