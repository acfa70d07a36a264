import { useState } from 'react'
import { expect, test, vi } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { useStore } from 'zustand'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { failedWork, forgetFailedWork } from '@/app/kit/page/failed-work.ts'
import { Toast } from '@/app/kit/page/toast.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { Timer } from '@/app/kit/time/timer.tsx'
import { NotebookFailure } from '@/notebook/notebook-failure.ts'

test('a press that is still at work takes no second one', async () => {
  let finish: () => void = () => undefined
  const onPress = vi.fn(() => new Promise<void>((resolve) => (finish = resolve)))
  const screen = await render(<Button onPress={onPress}>Keep</Button>)
  const button = screen.getByRole('button')
  await button.click()
  await expect.element(button).toHaveAttribute('aria-busy', 'true')
  await button.click()
  expect(onPress).toHaveBeenCalledTimes(1)
  finish()
  await expect.element(button).not.toHaveAttribute('aria-busy')
})

test('a press that fails is said by the boundary around it, and can be tried again', async () => {
  const screen = await render(
    <ErrorBoundary what="the log">
      <Button onPress={() => Promise.reject(new Error('no room left'))}>Keep</Button>
    </ErrorBoundary>,
  )
  await screen.getByRole('button', { name: 'Keep' }).click()
  await expect.element(screen.getByRole('alert')).toHaveTextContent('no room left')
  await screen.getByRole('button', { name: 'Try again' }).click()
  await expect.element(screen.getByRole('button', { name: 'Keep' })).toBeVisible()
})

function Page() {
  const [open, setOpen] = useState(false)
  return (
    <>
      <Button onPress={() => setOpen(true)}>Open it</Button>
      <Dialog title="Erase?" open={open} onClose={() => setOpen(false)}>
        Really.
      </Dialog>
    </>
  )
}

test('a dialog takes the focus, closes by Escape and gives the focus back', async () => {
  const screen = await render(<Page />)
  const opener = screen.getByRole('button', { name: 'Open it' })
  await opener.click()
  await expect.element(screen.getByRole('dialog', { name: 'Erase?' })).toBeVisible()
  await expect.element(screen.getByRole('button', { name: 'Close' })).toHaveFocus()
  await userEvent.keyboard('{Escape}')
  await expect.element(opener).toHaveFocus()
})

test('a timer counts down to its goal from its start stamp, then says how much it is over', async () => {
  // Started at 0, goal 10 min: at 5 min 28 s 4:32 are left; at 12 min 5 s it is 2:05 over.
  const at = (seconds: number) => (
    <Timer label="Rest" startedAt={0} clock={() => seconds * 1000} goalSeconds={600} />
  )
  const screen = await render(at(328))
  await expect.element(screen.getByRole('timer')).toHaveTextContent('04:32')
  await screen.rerender(at(725))
  await expect.element(screen.getByRole('timer')).toHaveTextContent('+02:05')
  await expect.element(screen.getByText('over')).toBeVisible()
})

test('what the notebook could not do leaves the page with what was typed, and is said above an open dialog', async () => {
  const press = () => Promise.reject(new NotebookFailure('out-of-room'))
  const screen = await render(
    <ErrorBoundary what="the form">
      <Dialog title="Keep it?" open onClose={() => undefined}>
        <input aria-label="Name" />
        <Button onPress={press}>Keep</Button>
      </Dialog>
      <FailedToast />
    </ErrorBoundary>,
  )
  await screen.getByLabelText('Name').fill('spelt, lot 3')
  await screen.getByRole('button', { name: 'Keep' }).click()
  await expect.element(screen.getByText('out-of-room')).toBeVisible()
  await expect.element(screen.getByLabelText('Name')).toHaveValue('spelt, lot 3')
  const toast = screen.getByText('out-of-room').element().parentElement
  // The browser's top layer: what was lifted there last lies above a dialog that was opened before it.
  expect(toast?.matches(':popover-open')).toBe(true)
  forgetFailedWork()
})

function FailedToast() {
  const last = useStore(failedWork, (state) => state.last)
  return last ? <Toast failed message={last.reason ?? ''} onClose={forgetFailedWork} /> : null
}
