import { expect } from 'vitest'
import { page } from 'vitest/browser'

const shut =
  ':is(h2, h3) > button[aria-expanded="false"], span[role="button"][aria-expanded="false"]'

/** Opens everything of the plan that stands shut: its folds, and what the values of its sentences open. */
export async function openParts(): Promise<void> {
  await expect.element(page.getByRole('heading', { name: 'Plan', exact: true })).toBeInTheDocument()
  const drawn = () => new Promise((done) => requestAnimationFrame(done))
  for (;;) {
    const parts = document.querySelectorAll<HTMLElement>(shut)
    if (parts.length === 0) break
    for (const part of parts) if (part.matches(shut)) part.click()
    await drawn()
  }
  // The last value that was opened takes the focus into its field within two frames.
  for (let frame = 0; frame < 3; frame += 1) await drawn()
}
