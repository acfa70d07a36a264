import { afterEach, expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-react'
import { StartFailure } from '@/app/frame/start-failure.tsx'
import { forgetFailedWork, tellFailedWork } from '@/app/kit/page/failed-work.ts'
import { offline } from '@/app/services/offline.ts'
import { forgetUnkept, showUnkept } from '@/app/services/unkept.ts'
import { failureReasons } from '@/core/record/failure-reason.ts'
import { atTheTable, openedAt } from '../tasting/opened.tsx'

afterEach(() => {
  forgetFailedWork()
  forgetUnkept('note')
  offline.setState({ ready: false, update: null, taken: false, failure: null })
})

const leaving = () => {
  const event = new Event('beforeunload', { cancelable: true })
  window.dispatchEvent(event)
  return event.defaultPrevented
}

test('what could not be kept stands on every page with its text, holds the window, and goes when it is kept or given up', async () => {
  const { screen } = await openedAt('', atTheTable())
  expect(leaving()).toBe(false)
  const retry = vi.fn(async () => forgetUnkept('note'))
  const note = { key: 'note', what: 'The note of batch C', text: 'sticky at the second fold' }
  showUnkept({ ...note, reason: 'out-of-room', retry, giveUp: () => forgetUnkept('note') })
  for (const place of ['', 'kitchen', 'nowhere/at/all']) {
    location.hash = `#/${place}`
    await expect
      .element(screen.getByText('The note of batch C could not be kept. This device has no room'))
      .toBeVisible()
    await expect.element(screen.getByText('sticky at the second fold')).toBeVisible()
  }
  expect(leaving()).toBe(true)
  await screen.getByRole('button', { name: 'Try again' }).click()
  expect(retry).toHaveBeenCalledOnce()
  await expect.element(screen.getByText('sticky at the second fold')).not.toBeInTheDocument()
  expect(leaving()).toBe(false)
  showUnkept({ ...note, reason: 'out-of-room', retry, giveUp: () => forgetUnkept('note') })
  await screen.getByRole('button', { name: 'Give it up' }).click()
  await expect.element(screen.getByText('sticky at the second fold')).not.toBeInTheDocument()
})

test('a newer version is offered, can wait, and is taken by one press; taken elsewhere, this page says that it is the older one', async () => {
  const { screen } = await openedAt('', atTheTable())
  const update = vi.fn(async () => undefined)
  offline.setState({ update })
  await screen.getByRole('button', { name: 'Later' }).click()
  await expect.element(screen.getByText('A newer version is ready')).not.toBeInTheDocument()
  expect(update).not.toHaveBeenCalled()
  offline.setState({ update })
  await screen.getByRole('button', { name: 'Take it now' }).click()
  expect(update).toHaveBeenCalledOnce()
  offline.setState({ taken: true })
  await expect.element(screen.getByText('Another window has taken a newer version')).toBeVisible()
})

test('a press that came to nothing says why, and what of it is kept; of an unknown cause, what the program says', async () => {
  const { screen } = await openedAt('', atTheTable())
  tellFailedWork(Object.assign(new Error('quota'), { reason: 'out-of-room' }))
  await expect.element(screen.getByText(/everything kept before it is safe/)).toBeVisible()
  expect(document.body.textContent).not.toContain('The program says')
  tellFailedWork(new Error('a wheel came off'))
  await expect.element(screen.getByText(/The program says: “a wheel came off”/)).toBeVisible()
})

test('an address that leads nowhere says so and leads to the notebook', async () => {
  const { screen } = await openedAt('trial/none-such/plan', atTheTable())
  await expect
    .element(screen.getByRole('heading', { name: 'This trial is not in the notebook' }))
    .toBeVisible()
  await screen.getByRole('link', { name: 'Open the notebook' }).click()
  await expect.element(screen.getByText('A trial under cover')).toBeVisible()
})

test('without a notebook the page names the cause and the mend, never a reason of the program', async () => {
  for (const trouble of ['no-store', ...failureReasons] as const) {
    const screen = await render(<StartFailure trouble={trouble} detail="" />)
    expect(document.querySelector('main')?.textContent?.length).toBeGreaterThan(60)
    if (trouble.includes('-')) expect(document.body.textContent).not.toContain(trouble)
    await expect.element(screen.getByRole('button', { name: 'Reload' })).toBeVisible()
    await screen.unmount()
  }
})
