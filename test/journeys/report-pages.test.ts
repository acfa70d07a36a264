import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { sampleTrial } from '../core/findings/sample-trial.ts'
import { openBrowser, pagesOf } from './visit.ts'

let browser: Browser

beforeAll(async () => {
  browser = await openBrowser()
})
afterAll(() => browser.close())

function reportOf(sample: string): string {
  const whole = sampleTrial(sample)
  const found = trialFindings(whole, { unsealed: true, resamples: null })
  if (!found.ok) throw new Error('it is asked for unsealed')
  const made = reportDocument({
    ...{ whole, scores: found.scores, findings: found.document },
    next: nextSteps(found.document, { toMend: 0 }),
    ...{ version: '1', dataSha256: '0'.repeat(64), clock: civilTime, unsealed: true },
  })
  if (!made.ok) throw new Error('it is asked for unsealed')
  return reportHtml(made.document)
}

test.each(['focaccia-hydration', 'flatbread-hydration', 'pan-loaf-salt'])(
  'the report of %s prints on two pages of A4 or Letter before its appendix, which begins a page of its own',
  { timeout: 20_000 },
  async (sample) => {
    const page = await browser.newPage()
    await page.setContent(reportOf(sample))
    await page.emulateMedia({ media: 'print' })
    const appendix = page.locator('.appendix')
    expect(await appendix.evaluate((part) => getComputedStyle(part).breakBefore)).toBe('page')
    await appendix.evaluate((part) => part.remove())
    for (const format of ['A4', 'Letter']) {
      const pages = pagesOf(await page.pdf({ format }))
      expect(pages, `${sample} on ${format}`).toBeGreaterThan(0)
      expect(pages, `${sample} on ${format}`).toBeLessThanOrEqual(2)
    }
    await page.close()
  },
)
