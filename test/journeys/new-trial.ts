import type { Page } from 'playwright-core'

/** Begins a trial as the plain loaf that is there to be changed, and opens every part of its plan. */
export async function newTrial(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New trial' }).click()
  await page.getByRole('button', { name: 'Skip: a plain loaf to change' }).click()
  await page.waitForURL(/#\/trial\/[\w-]+\/plan$/)
  await openPlanParts(page)
}

/** Opens everything of the plan that stands shut: its folds, and what the values of its sentences open. */
export async function openPlanParts(page: Page): Promise<void> {
  await page.getByRole('heading', { level: 1, name: 'Plan', exact: true }).waitFor()
  await page.locator('span[role="button"]').first().waitFor()
  await page.evaluate(async () => {
    for (;;) {
      const shut = document.querySelector<HTMLElement>(
        ':is(h2, h3) > button[aria-expanded="false"], span[role="button"][aria-expanded="false"]',
      )
      if (!shut) break
      shut.click()
      await new Promise((drawn) => requestAnimationFrame(drawn))
    }
    window.scrollTo(0, 0)
  })
}
