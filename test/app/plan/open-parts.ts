import { expect } from 'vitest'
import { page } from 'vitest/browser'

const shut =
  ':is(h2, h3) > button[aria-expanded="false"], span[role="button"][aria-expanded="false"]'

/** Opens everything of the plan that stands shut: its folds, and what the values of its sentences open. */
export async function openParts(): Promise<void> {
  await expect.element(page.getByRole('heading', { name: 'Plan', exact: true })).toBeInTheDocument()
  for (;;) {
    const parts = document.querySelectorAll<HTMLElement>(shut)
    if (parts.length === 0) break
    for (const part of parts) if (part.matches(shut)) part.click()
    await new Promise((drawn) => requestAnimationFrame(drawn))
  }
}
