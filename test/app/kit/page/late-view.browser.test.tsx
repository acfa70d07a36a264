import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'

test('a page whose program could not be fetched is fetched anew by Try again', async () => {
  // React tells of the failure that is planted here.
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined)
  let asked = 0
  const Page = lateComponent(
    async () => {
      asked += 1
      if (asked === 1) throw new TypeError('Failed to fetch the program')
      return () => <p>The page stands</p>
    },
    <p>Opening</p>,
  )
  const screen = await render(
    <ErrorBoundary what="this page">
      <Page />
    </ErrorBoundary>,
  )
  await screen.getByRole('button', { name: 'Try again', exact: true }).click()
  await expect.element(screen.getByText('The page stands', { exact: true })).toBeVisible()
  expect(asked).toBe(2)
  told.mockRestore()
})
