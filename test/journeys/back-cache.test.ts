import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { bytesOfSlip } from '@/slip/ballot-slip.ts'
import { linkTextOf } from '@/slip/link-text.ts'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { madeSlip } from '../slip/made-slip.ts'
import { awayAndBack, keepsPages, openKeepingPages } from './back-cache.ts'
import { BenchHands } from './bench-hands.ts'
import { draftKept } from './draft-kept.ts'
import { openPlanParts } from './new-trial.ts'
import { readIn } from './read-in.ts'
import { tastingTrial } from './tasting-trial.ts'
import { trialOnDisk } from './trial-on-disk.ts'
import { visit } from './visit.ts'

const baseUrl = inject('baseUrl')
const elsewhere = `${baseUrl}licences/dependencies.json`
let browser: Browser
let keeps = false

beforeAll(async () => {
  browser = await openKeepingPages()
  keeps = await keepsPages(browser, elsewhere, `${baseUrl}licences/rokkitt.txt`)
})
afterAll(() => browser.close())

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first()
const title = (page: Page, name: string) =>
  page.getByRole('heading', { level: 1, name, exact: true })

interface Place {
  /** A browser that keeps pages does not keep this one, and loads it anew. */
  mayComeAnew?: true
  /** Brings the page there. */
  open: (page: Page) => Promise<unknown>
  /** Another tab of the same notebook changes something while the page is away. */
  meanwhile?: (tab: Page, url: string) => Promise<unknown>
  /** What stands is shown, also what was changed meanwhile. */
  stands: (page: Page) => Promise<unknown>
  /** A press, and that it is kept. */
  acts: (page: Page) => Promise<unknown>
}

const whole = tastingTrial()
const focaccia = sampleTrial('focaccia-hydration')
const slip = madeSlip(2, 1, {
  ...{ sets: [], tellApart: null, asksUsual: false, ranking: null, allergens: [] },
  ...{ warmUpCode: null, rest: { restSeconds: 0, pauseSeconds: 0 } },
})
const at = (id: string, place: string) => `${baseUrl}#/trial/${id}/${place}`
const line = (page: Page) => page.getByRole('list', { name: 'Trials' }).locator('> li')
const benchPress = (page: Page) =>
  page.getByRole('region', { name: 'Main press' }).getByRole('button').first()
/** The dough that the hands are sent to, and what is to be done. */
const inFront = async (page: Page) => {
  const now = page.getByRole('region', { name: 'Now' })
  return `${await now.getByRole('heading').first().innerText()}: ${await new BenchHands(page, async () => undefined).letter()}`
}
const question = (page: Page) => page.getByLabel('Question', { exact: true })
const asked = async (page: Page) => (await trialOnDisk(page)).plans[0]?.question
const eventsOf = async (page: Page) => (await trialOnDisk(page)).events.length

const places: Record<string, Place> = {
  Notebook: {
    open: async (page) => {
      await readIn(page, baseUrl, whole)
      await page.goto(baseUrl)
      await expect.poll(() => line(page).count()).toBe(1)
    },
    meanwhile: (tab) => readIn(tab, baseUrl, focaccia),
    stands: (page) => expect.poll(() => line(page).count()).toBe(2),
    acts: async (page) => {
      await press(page, /^More: /).click()
      await press(page, /^Put away: /).click()
      await press(page, 'Undo').waitFor()
      await page.reload()
      await expect.poll(() => line(page).count()).toBe(1)
    },
  },
  Kitchen: {
    open: async (page) => {
      await page.goto(`${baseUrl}#/kitchen`)
      await page.getByRole('radio', { name: '°F' }).waitFor()
    },
    meanwhile: async (tab, url) => {
      await tab.goto(url)
      await tab.getByRole('radio', { name: '°F' }).click()
      await tab.getByRole('radio', { name: '°F', checked: true }).waitFor()
    },
    stands: (page) => page.getByRole('radio', { name: '°F', checked: true }).waitFor(),
    acts: async (page) => {
      await page.getByRole('radio', { name: 'ounces' }).click()
      await page.getByRole('radio', { name: 'ounces', checked: true }).waitFor()
      await page.reload()
      await page.getByRole('radio', { name: 'ounces', checked: true }).waitFor()
    },
  },
  Bench: {
    mayComeAnew: true,
    open: async (page) => {
      await page.goto(`${baseUrl}#/`)
      await press(page, /flatbread/).click()
      await benchPress(page).waitFor()
    },
    meanwhile: async (tab, url) => {
      await tab.goto(url)
      const before = await eventsOf(tab)
      await benchPress(tab).click()
      await expect.poll(() => eventsOf(tab)).toBe(before + 1)
    },
    stands: async (page) => {
      const [tab = page] = page
        .context()
        .pages()
        .filter((each) => each !== page)
      const there = await inFront(tab)
      await expect.poll(() => inFront(page)).toBe(there)
    },
    acts: async (page) => {
      const before = await eventsOf(page)
      await benchPress(page).click()
      await expect.poll(() => eventsOf(page)).toBe(before + 1)
    },
  },
  Plan: {
    open: async (page) => {
      await readIn(page, baseUrl, whole)
      await openPlanParts(page)
    },
    meanwhile: async (tab, url) => {
      await tab.goto(url)
      await openPlanParts(tab)
      await question(tab).fill('Asked in another tab?')
      await expect.poll(() => asked(tab)).toBe('Asked in another tab?')
    },
    stands: (page) => expect.poll(() => question(page).inputValue()).toBe('Asked in another tab?'),
    acts: async (page) => {
      await question(page).fill('Asked after Back?')
      await expect.poll(() => asked(page)).toBe('Asked after Back?')
    },
  },
  'Tasting, a ballot': {
    open: async (page) => {
      await readIn(page, baseUrl, whole)
      await page.goto(at(whole.trial.id, 'tasting'))
      await press(page, /^AN/).click()
      await press(page, 'I can eat this: begin').click()
      await press(page, /^Liking: 6/).click()
    },
    stands: (page) => page.getByRole('button', { name: /^Liking: 6/, pressed: true }).waitFor(),
    acts: async (page) => {
      await press(page, /^Chew: 3/).click()
      await press(page, /^Seal \d{3}$/).click()
      await page.getByText('2 of 4', { exact: true }).waitFor()
      expect((await trialOnDisk(page)).ballots).toHaveLength(1)
    },
  },
  'A taster’s own phone': {
    open: async (page) => {
      await page.goto(`${baseUrl}#/slip/${linkTextOf(bytesOfSlip(slip))}`)
      await press(page, 'I can eat this: begin').click()
      await press(page, /^Liking: 6/).click()
    },
    stands: (page) => page.getByRole('button', { name: /^Liking: 6/, pressed: true }).waitFor(),
    acts: async (page) => {
      await press(page, /^Liking: 8/).click()
      await draftKept(page, '8')
      await press(page, /^Seal \d{3}$/).click()
      await page.reload()
      await page.getByText('2 of 2', { exact: true }).waitFor()
    },
  },
  Findings: {
    open: async (page) => {
      await readIn(page, baseUrl, focaccia)
      await page.goto(at(focaccia.trial.id, 'findings'))
      await press(page, 'Adopt 74 %').waitFor()
    },
    stands: (page) => page.getByRole('list', { name: 'How far this carries' }).waitFor(),
    acts: async (page) => {
      await press(page, 'Adopt 74 %').click()
      await press(page, 'Keep it').click()
      await title(page, 'House dough, 74 %').waitFor()
      await page.reload()
      await title(page, 'House dough, 74 %').waitFor()
    },
  },
}

places.Report = {
  open: async (page) => {
    await readIn(page, baseUrl, focaccia)
    await page.goto(at(focaccia.trial.id, 'report'))
    await page.getByRole('article').first().waitFor()
  },
  stands: (page) => page.getByRole('article').first().waitFor(),
  acts: async (page) => {
    const saving = page.waitForEvent('download')
    await press(page, 'Report as HTML').click()
    await saving
  },
}

places['New trial'] = {
  open: async (page) => {
    await page.goto(`${baseUrl}#/new`)
    await press(page, 'Skip: a plain loaf to change').waitFor()
  },
  stands: (page) => press(page, 'Skip: a plain loaf to change').waitFor(),
  acts: async (page) => {
    await press(page, 'Skip: a plain loaf to change').click()
    await openPlanParts(page)
    await question(page).fill('Begun after Back?')
    await expect.poll(() => asked(page)).toBe('Begun after Back?')
  },
}

test.each(Object.entries(places))(
  '%s that comes back by Back out of the browser’s cache shows what stands and takes a press that is kept',
  async (_, { open, meanwhile, stands, acts, mayComeAnew }) => {
    const { page, troubles } = await visit(browser, baseUrl)
    await open(page)
    const url = page.url()
    const came = await awayAndBack(page, { keeps, elsewhere }, async () => {
      if (!meanwhile) return
      const tab = await page.context().newPage()
      await meanwhile(tab, url)
    })
    expect(came || mayComeAnew === true).toBe(true)
    await stands(page)
    await acts(page)
    expect(await page.getByRole('alert').count()).toBe(0)
    expect(troubles).toEqual([])
    await page.context().close()
  },
)
