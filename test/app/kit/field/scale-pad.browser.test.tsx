import { useState } from 'react'
import { expect, test } from 'vitest'
import { render } from 'vitest-browser-react'
import { ScalePad } from '@/app/kit/field/scale-pad.tsx'
import type { AnswerScale } from '@/core/trial/response.ts'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'

type Points = Exclude<AnswerScale, { kind: 'measured' }>

const liking: Points = {
  kind: 'nine-point',
  anchors: [
    { at: 1, text: 'dislike it very much' },
    { at: 9, text: 'like it very much' },
  ],
}

function Asked({ scale, name }: { scale: Points; name: string }) {
  const [value, setValue] = useState<number | null>(null)
  return <ScalePad name={name} scale={scale} value={value} onPick={setValue} />
}

test('nine keys of at least 64 px, each saying its point and the words at its end', async () => {
  const screen = await render(<Asked scale={liking} name="Liking" />)
  const keys = screen.getByRole('button').elements()
  expect(keys.length).toBe(9)
  for (const key of keys) expect(key.getBoundingClientRect().height).toBeGreaterThanOrEqual(64)
  await expect
    .element(screen.getByRole('button', { name: 'Liking: 9, like it very much' }))
    .toBeVisible()
})

test('a press is the answer, another press mends it, and no key moves', async () => {
  const screen = await render(<Asked scale={liking} name="Liking" />)
  const heights = () =>
    screen
      .getByRole('button')
      .elements()
      .map((key) => key.getBoundingClientRect().height)
  const before = heights()
  await screen.getByRole('button', { name: 'Liking: 7' }).click()
  await screen.getByRole('button', { name: 'Liking: 4' }).click()
  await expect
    .element(screen.getByRole('button', { name: 'Liking: 4' }))
    .toHaveAttribute('aria-pressed', 'true')
  await expect
    .element(screen.getByRole('button', { name: 'Liking: 7' }))
    .toHaveAttribute('aria-pressed', 'false')
  expect(heights()).toEqual(before)
})

test('a just-about-right scale has five points with its own ends and its middle named', async () => {
  const screen = await render(
    <Asked scale={{ kind: 'just-about-right', low: 'too soft', high: 'too tough' }} name="Chew" />,
  )
  expect(screen.getByRole('button').elements().length).toBe(5)
  await expect
    .element(screen.getByRole('button', { name: 'Chew: 3, just about right' }))
    .toBeVisible()
  await expect.element(screen.getByRole('button', { name: 'Chew: 5, too tough' })).toBeVisible()
})
