import { expect } from 'vitest'
import { page } from 'vitest/browser'

/** Opens everything of the plan that stands shut: its folds, and what the values of its sentences open. */
export async function openParts(): Promise<void> {
  await expect.element(page.getByRole('heading', { name: 'Plan', exact: true })).toBeInTheDocument()
  for (;;) {
    const shut = document.querySelector<HTMLElement>(
      ':is(h2, h3) > button[aria-expanded="false"], span[role="button"][aria-expanded="false"]',
    )
    if (!shut) break
    shut.click()
    await new Promise((drawn) => requestAnimationFrame(drawn))
  }
}
