import type { Page } from 'playwright-core'
import type { SheetLine } from './day-script.ts'

/** The run sheet as it lies on paper. */
export interface SheetOnPaper {
  /** Its days, as they are named. */
  days: string[]
  /** Who helps when, as it stands over the lines. */
  helpers: string[]
  lines: SheetLine[]
}

/** Prints the run sheet from the page of the day, reads it and lays it down; `midnight`: that of its first day, UTC ms. */
export async function sheetOnPaper(page: Page, midnight: number): Promise<SheetOnPaper> {
  // Paper lies until the print dialog is closed; a browser without a screen closes its own at once.
  await page.evaluate(() => Object.assign(window, { print: () => undefined }))
  await page.getByRole('button', { name: 'Print the run sheet', exact: true }).click()
  const head = page.locator('p', { hasText: 'Run sheet' })
  await head.waitFor({ state: 'attached' })
  const read = await head.evaluate((paper) => {
    const sheet = paper.parentElement
    const rows = [...(sheet?.querySelectorAll('tbody tr') ?? [])]
    return {
      helpers: [...(sheet?.querySelectorAll('p') ?? [])].flatMap(({ textContent }) =>
        textContent.startsWith('Helper') ? [textContent] : [],
      ),
      rows: rows.map((row) => ({
        plan: row.querySelector('th')?.textContent ?? '',
        cells: [...row.querySelectorAll('td')].map(({ textContent }) => textContent),
      })),
    }
  })
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  await head.waitFor({ state: 'detached' })
  const days: string[] = []
  const lines = read.rows.map(({ plan, cells }): SheetLine => {
    const [, day, hour = '', minute = '', second = '0'] =
      /^(\D.* )?(\d+):(\d+)(?::(\d+))?$/.exec(plan) ?? []
    if (day) days.push(day.trim())
    const of =
      (days.length - 1) * 86_400 + Number(hour) * 3600 + Number(minute) * 60 + Number(second)
    const [, step = '', dough = ''] = /^(.*), dough (\d)$/.exec(cells[2] ?? '') ?? []
    const hands = /^(?:(\d+) min)?(?: (helper \d))?$/.exec(cells[3] ?? '')
    if (hour === '' || step === '' || !hands)
      throw new Error(`no line of a sheet: ${plan} ${cells}`)
    return {
      ...{ at: midnight + of * 1000, step, dough: Number(dough) },
      handsSeconds: Number(hands[1] ?? 0) * 60,
      by: hands[2] ?? '',
    }
  })
  return { days, helpers: read.helpers, lines }
}
