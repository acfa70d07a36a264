import { beforeEach, vi } from 'vitest'
import { page } from 'vitest/browser'
import { cleanup } from 'vitest-browser-react'

// The files share one page, so that the modules of the app are fetched once. Each test finds it as the first one did.
beforeEach(async () => {
  await cleanup()
  vi.restoreAllMocks()
  history.replaceState(null, '', '#')
  await page.viewport(414, 896)
})
