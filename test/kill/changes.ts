import type { Page } from 'playwright-core'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { copyWithNewIds } from '@/trial-file/copy-with-new-ids.ts'
import { readIn } from '../journeys/read-in.ts'
import { sealNext } from '../journeys/seal-next.ts'
import { tastingTrial } from '../journeys/tasting-trial.ts'
import { sessionOf } from '../trial-of/session-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

interface Place {
  page: Page
  baseUrl: string
  /** Counts the rounds, so that each change says something of its own. */
  round: number
}

/** One kind of change: makes it as a person does and answers as soon as the page shows it as kept. */
export interface Change {
  name: string
  make: (place: Place) => Promise<{ counts: Record<string, number>; question?: string }>
}

const undoOf = (page: Page, words: RegExp) => page.getByRole('button', { name: words })

/** A dealt day in which nothing has happened yet, under ids of its own. */
function freshDay(round: number): WholeTrial {
  const whole = { ...wholeTrialOf(), sessions: [sessionOf()], events: [], ballots: [], photos: [] }
  const kitchen = new Set(whole.kitchen.map(({ id }) => id))
  let ids = 0
  return copyWithNewIds(whole, () => `kill-${round}-${++ids}`, kitchen)
}

/** The smallest picture there is: one pixel, PNG. */
const pixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
)

/** The ballots of one profile: a device that lies at the table is closed to every other place, so they have a profile of their own. */
export function changesAtTable(): readonly Change[] {
  let tasting = ''
  return [
    {
      name: 'ballot',
      make: async ({ page, baseUrl }) => {
        if (tasting === '') {
          await readIn(page, baseUrl, tastingTrial())
          tasting = page.url().replace(/\w+$/, 'tasting')
        }
        await page.goto(tasting)
        await sealNext(page)
        return { counts: { ballots: 1 } }
      },
    },
  ]
}

/** Every other kind of change, for one profile: where its trials are is remembered from one change to the next. */
export function changesOfProfile(): readonly Change[] {
  let bench = ''
  const openBench = async ({ page }: Place) => {
    await page.goto(bench)
    await page.getByRole('button', { name: 'More to log' }).waitFor()
  }
  return [
    {
      name: 'import',
      make: async ({ page, baseUrl, round }) => {
        await readIn(page, baseUrl, freshDay(round))
        bench = page.url().replace(/plan$/, 'bench')
        return { counts: { trials: 1 } }
      },
    },
    {
      name: 'press',
      make: async (place) => {
        await openBench(place)
        await place.page.getByRole('button', { name: 'Begin', exact: true }).click()
        await undoOf(place.page, /^Undo .*begun/).waitFor()
        return { counts: { 'step-started': 1 } }
      },
    },
    {
      name: 'undo',
      make: async (place) => {
        await openBench(place)
        await undoOf(place.page, /^Undo .*begun/).click()
        await place.page.getByRole('button', { name: 'Begin', exact: true }).waitFor()
        return { counts: { void: 1 } }
      },
    },
    {
      name: 'weight',
      make: async (place) => {
        await openBench(place)
        await place.page.getByRole('button', { name: 'Weigh', exact: true }).click()
        await place.page.getByRole('button', { name: /shows/i }).first().click()
        await undoOf(place.page, /^Undo/).waitFor()
        return { counts: { weighed: 1 } }
      },
    },
    {
      name: 'temperature',
      make: async (place) => {
        const celsius = (23 + (place.round % 20) / 10).toFixed(1)
        await openBench(place)
        await place.page.getByRole('button', { name: 'More to log' }).click()
        await place.page.getByRole('button', { name: 'Temperature', exact: true }).click()
        await place.page.getByLabel('Dough temperature').fill(celsius)
        await place.page.getByRole('button', { name: /^Keep \d/ }).click()
        await undoOf(place.page, /^Undo .*Dough/).waitFor()
        return { counts: { temperature: 1 } }
      },
    },
    {
      name: 'photo',
      make: async (place) => {
        await openBench(place)
        const photo = place.page.getByRole('button', { name: 'Photo', exact: true })
        const more = place.page.getByRole('button', { name: /^More/ })
        if (!(await photo.isVisible())) await more.click()
        await photo.click()
        await place.page
          .locator('input[type=file][accept="image/*"]:not([capture])')
          .setInputFiles({
            ...{ name: 'dough.png', mimeType: 'image/png', buffer: pixel },
          })
        await undoOf(place.page, /^Undo .*[Pp]hoto/).waitFor()
        return { counts: { photos: 1, pictures: 1, photo: 1 } }
      },
    },
    {
      name: 'plan edit',
      make: async ({ page, round }) => {
        const asked = `Is it still here after kill ${round}?`
        await page.goto(bench.replace(/bench$/, 'plan'))
        const question = page.getByLabel('Question', { exact: true })
        const part = page.getByRole('button', { name: /^The question/ })
        await part.or(question).first().waitFor()
        if (!(await question.isVisible())) await part.click()
        await question.fill(asked)
        await page.locator('[data-kept=kept]').waitFor()
        return { counts: {}, question: asked }
      },
    },
  ]
}
