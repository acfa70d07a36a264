import { useState } from 'react'
import { expect, test } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { keepFocus, landing } from '@/app/kit/press/keep-focus.ts'

/** A part of a page with two headings and a button under the second that is pressed once. */
function Part({ then }: { then: 'gone' | 'disabled' | 'other' }) {
  const [pressed, setPressed] = useState(false)
  return (
    <main>
      <div ref={keepFocus}>
        <h1 {...landing}>Day</h1>
        <section>
          <h2 {...landing}>Piece</h2>
          {pressed && then === 'gone' ? null : (
            <button type="button" disabled={pressed} onClick={() => setPressed(true)}>
              In
            </button>
          )}
          {pressed && then === 'other' ? <h3 {...landing}>Opened</h3> : null}
        </section>
      </div>
      <p>Blank</p>
    </main>
  )
}

test.each([
  ['gone', 'Piece'],
  ['disabled', 'Piece'],
  ['other', 'Opened'],
] as const)(
  'a control pressed and then %s hands its focus to the heading “%s”',
  async (then, heading) => {
    const screen = await render(<Part then={then} />)
    screen.getByRole('button').element().focus()
    await userEvent.keyboard('{Enter}')
    await expect.element(screen.getByRole('heading', { name: heading })).toHaveFocus()
  },
)

test('who left a control by choice is left alone when it goes', async () => {
  const screen = await render(<Part then="gone" />)
  const button = screen.getByRole('button').element()
  button.focus()
  await screen.getByText('Blank').click()
  button.dispatchEvent(new MouseEvent('click', { bubbles: true }))
  await expect.element(screen.getByRole('button')).not.toBeInTheDocument()
  expect(document.activeElement).toBe(document.body)
})
