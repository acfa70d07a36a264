import type { Page } from 'playwright-core'

/** Seals the next sample of whoever sits there, or of the next who has not begun; answers once the next one stands there. */
export async function sealNext(page: Page): Promise<void> {
  const liking = page.getByRole('button', { name: 'Liking: 7' })
  const begin = page.getByRole('button', { name: 'I can eat this: begin' })
  const taster = page.getByRole('button', { name: /not begun/ }).first()
  const handOn = page.getByRole('button', { name: 'Hand the device on' })
  for (;;) {
    await liking.or(begin).or(taster).or(handOn).first().waitFor()
    if (await liking.isVisible()) break
    for (const press of [begin, taster, handOn])
      if (await press.isVisible()) {
        await press.click()
        await press.waitFor({ state: 'detached' })
        break
      }
  }
  await liking.click()
  await page.getByRole('button', { name: 'Chew: 3, just about right' }).click()
  const seal = page.getByRole('button', { name: /^Seal \d{3}$/ })
  const name = (await seal.textContent()) ?? ''
  await seal.click()
  await page.getByRole('button', { name, exact: true }).waitFor({ state: 'detached' })
}
