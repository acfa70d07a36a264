import { useState } from 'react'
import { beforeEach, expect, test } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { Button } from '@/app/kit/press/button.tsx'
import { guardPresses } from '@/app/kit/press/guard-presses.ts'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'

/** The steps of a dough as the bench shows them: one press, and the same place stands for the next. */
function Steps({ moved = 0 }: { moved?: number }) {
  const [done, setDone] = useState<number[]>([])
  const [asked, setAsked] = useState(0)
  return (
    <div ref={guardPresses}>
      <Button
        kind="primary"
        size="bench"
        means={`step ${done.length + moved}`}
        onPress={() => setDone([...done, done.length + moved])}
      >
        Next
      </Button>
      <Button onPress={() => setAsked(asked + 1)}>Another flour</Button>
      <output aria-label="done">{done.join()}</output>
      <output aria-label="asked">{asked}</output>
    </div>
  )
}

const veils = () => document.querySelectorAll('[data-veil]')
/** What a finger meets there now: a press by the browser's own events takes its time, and would wait for the veil. */
const under = (element: Element) => {
  const { left, top, width, height } = element.getBoundingClientRect()
  return document.elementFromPoint(left + width / 2, top + height / 2)
}

beforeEach(() => expect.poll(() => veils().length).toBe(0))

test('a place that came to mean the next step takes no press for 0.7 s, and every other place does', async () => {
  const screen = await render(<Steps />)
  const next = screen.getByRole('button', { name: 'Next' })
  const other = screen.getByRole('button', { name: 'Another flour' })
  await next.click()
  const since = performance.now()
  expect(under(next.element())).not.toBe(next.element())
  expect(under(other.element())).toBe(other.element())
  await expect.poll(() => veils().length, { interval: 10 }).toBe(0)
  // Not less than 0.7 s, give or take how coarse timers are and what passed before the first look.
  expect(performance.now() - since).toBeGreaterThan(500)
  expect(under(next.element())).toBe(next.element())
  await next.click()
  await expect.element(screen.getByLabelText('done')).toHaveTextContent('0,1')
})

test('a place that means what it meant takes one press after another', async () => {
  const screen = await render(<Steps />)
  const other = screen.getByRole('button', { name: 'Another flour' })
  for (const times of [1, 2, 3]) {
    await other.click()
    expect(veils()).toHaveLength(0)
    await expect.element(screen.getByLabelText('asked')).toHaveTextContent(String(times))
  }
})

test('a key that is held down, or pressed twice, presses once', async () => {
  const screen = await render(<Steps />)
  const next = screen.getByRole('button', { name: 'Next' })
  ;(next.element() as HTMLElement).focus()
  await userEvent.keyboard('{Enter}{Enter}')
  await userEvent.keyboard('{Enter>4/}')
  expect(screen.getByLabelText('done').element().textContent).toBe('0')
})

test('a place whose meaning moves on by itself takes no press for a moment', async () => {
  const screen = await render(<Steps />)
  const next = screen.getByRole('button', { name: 'Next' })
  expect(under(next.element())).toBe(next.element())
  await screen.rerender(<Steps moved={1} />)
  await expect.poll(() => under(next.element()) === next.element()).toBe(false)
  await expect.poll(() => under(next.element()) === next.element()).toBe(true)
})
