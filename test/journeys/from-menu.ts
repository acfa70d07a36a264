import type { Page } from 'playwright-core'

/** Chooses something in the one menu of the head, as soon as it stands there. */
export async function fromMenu(page: Page, words: string): Promise<void> {
  const menu = page.getByRole('navigation', { name: 'Menu' })
  await menu.getByRole('button', { name: 'Menu' }).click()
  await menu.getByRole('button', { name: words }).click()
}
