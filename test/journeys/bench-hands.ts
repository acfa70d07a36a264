import type { Locator, Page } from 'playwright-core'

/** What a press of the script is to log: who, what, and a number where one was typed. */
export interface Expected {
  kind: string
  letter: string
  step?: string
  value?: number
}

/** A pair of floury hands at the bench: counts its presses, and refuses one that is not on the screen without scrolling. */
export class BenchHands {
  presses = 0
  readonly expected: Expected[] = []

  readonly page: Page
  /** Where nothing is due: moves the made-up clock on. */
  readonly wait: (seconds: number) => Promise<void>

  constructor(page: Page, wait: (seconds: number) => Promise<void>) {
    this.page = page
    this.wait = wait
  }

  button(name: string | RegExp) {
    const exact = typeof name === 'string' ? { exact: true } : {}
    return this.page.getByRole('button', { name, ...exact })
  }

  /** One press of something that is in view, where it stands, with nothing scrolled. */
  async press(name: string | RegExp): Promise<void> {
    if (!(await this.pressed(name, 30_000))) throw new Error(`nothing to press is called ${name}`)
  }

  /** The same; false where it has left the screen meanwhile, or what was read is not `still` so. */
  async pressed(
    name: string | RegExp,
    timeout = 3000,
    still: () => Promise<boolean> = async () => true,
  ): Promise<boolean> {
    return await this.pressedHere(this.button(name).first(), `${name}`, timeout, still)
  }

  /** Brings a dough to the front by its tab on the rail. */
  async front(letter: string): Promise<void> {
    const tab = this.page.locator('nav[aria-label^="Doughs"] button', { hasText: letter }).first()
    if (!(await this.pressedHere(tab, `the tab of ${letter}`, 30_000)))
      throw new Error(`no tab of ${letter}`)
  }

  private async pressedHere(
    button: Locator,
    name: string,
    timeout: number,
    still: () => Promise<boolean> = async () => true,
  ): Promise<boolean> {
    // A place that has just come to mean something else takes no press for 0.7 s of the made-up clock.
    await this.wait(0.8)
    if (!(await still())) return false
    const isThere = await button.click({ trial: true, noWaitAfter: true, timeout }).then(
      () => true,
      async (cause: unknown) => {
        if ((await button.count()) > 0) throw cause
        return false
      },
    )
    if (!isThere) return false
    const box = await button.boundingBox()
    const { height, scrolled } = await this.page.evaluate(() => ({
      ...{ height: window.innerHeight, scrolled: window.scrollY },
    }))
    if (!box || box.y < 0 || box.y + box.height > height || scrolled > 0)
      throw new Error(`${name} is pressed only by scrolling (${scrolled}, ${JSON.stringify(box)})`)
    this.presses += 1
    await button.click()
    return true
  }

  async shows(name: string | RegExp): Promise<boolean> {
    return (await this.button(name).count()) > 0
  }

  /** The letter in front, as its tab on the rail says. */
  async letter(): Promise<string> {
    const tab = this.page.locator('nav[aria-label^="Doughs"] button[aria-current="true"]')
    return ((await tab.first().innerText()).trim().split(/\s/)[0] ?? '').trim()
  }

  async title(): Promise<string> {
    return (
      await this.page.getByRole('region', { name: 'Now' }).getByRole('heading').first().innerText()
    ).trim()
  }

  /** Types a number on the bench's own keys. */
  async type(text: string): Promise<void> {
    for (const key of text) await this.press(key)
  }
}

/** The log of the page's notebook as it lies on disk, in the order it was written. */
export async function logOf(page: Page): Promise<Record<string, unknown>[]> {
  return await page.evaluate(async () => {
    const [found] = await indexedDB.databases()
    return await new Promise<Record<string, unknown>[]>((resolve, reject) => {
      const open = indexedDB.open(found?.name ?? '')
      open.onerror = () => reject(open.error)
      open.onsuccess = () => {
        const asked = open.result.transaction('events').objectStore('events').getAll()
        asked.onsuccess = () => {
          open.result.close()
          resolve(asked.result.toSorted((a, b) => Number(a.count) - Number(b.count)))
        }
      }
    })
  })
}
