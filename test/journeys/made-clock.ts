import type { Page } from 'playwright-core'

/** Where the page finds its made-up time, UTC ms, and how much of it its bell ran. */
const keys = { now: 'made-clock', bell: 'made-bell' }

/**
 * A clock of the day that stands until it is set: every entry is stamped with the very second it was set to. The steady clock
 * goes with it, and so does the bell's unless the page is frozen. Short delays and beats of the page run in a tenth of their time.
 */
export async function makeClock(page: Page, at: number): Promise<void> {
  await page.addInitScript(standingClock, { keys, begun: at })
}

/** Sets the clock on to a moment, UTC ms. */
export async function setClock(page: Page, at: number): Promise<void> {
  const behind = await page.evaluate(
    ({ keys, at }) => {
      const before = Date.now()
      const bell = Number(localStorage.getItem(keys.bell) ?? 0)
      localStorage.setItem(keys.bell, String(bell + Math.max(0, at - before)))
      localStorage.setItem(keys.now, String(at))
      return before - at
    },
    { keys, at },
  )
  if (behind > 0) throw new Error(`the clock would go back by ${behind / 1000} s`)
}

/** Runs in the page, before its own scripts. */
function standingClock({ keys, begun }: { keys: { now: string; bell: string }; begun: number }) {
  const kept = (key: string) => Number(localStorage.getItem(key) ?? 0)
  Date.now = () => kept(keys.now) || begun
  performance.now = () => 1000 + Date.now() - begun
  const bell = Object.getOwnPropertyDescriptor(BaseAudioContext.prototype, 'currentTime')
  Object.defineProperty(BaseAudioContext.prototype, 'currentTime', {
    get(this: BaseAudioContext) {
      return Number(bell?.get?.call(this)) + kept(keys.bell) / 1000
    },
  })
  const [later, again] = [setTimeout, setInterval]
  const sooner = (delay = 0) => (delay <= 5000 ? delay / 10 : delay)
  Object.assign(globalThis, {
    setTimeout: (work: () => void, delay?: number) => later(work, sooner(delay)),
    setInterval: (work: () => void, delay?: number) => again(work, sooner(delay)),
  })
  // Asleep the clock of the day goes on and the bell stands.
  document.addEventListener('freeze', () => {
    const wakes = localStorage.getItem('made-waking')
    if (wakes !== null) localStorage.setItem(keys.now, wakes)
  })
}

/** What the clock will stand at when the page is next frozen and runs again. */
export async function wakesAt(page: Page, at: number): Promise<void> {
  await page.evaluate((moment) => localStorage.setItem('made-waking', String(moment)), at)
}
