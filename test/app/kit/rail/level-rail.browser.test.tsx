import { useState } from 'react'
import { expect, test, vi } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { LevelRail } from '@/app/kit/rail/level-rail.tsx'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'

const levels = [64, 66, 66.4, 80].map((value) => ({
  id: `level-${value}`,
  value,
  label: String(value),
  control: value === 66,
}))
const letters = new Map([
  ['level-64', 'C'],
  ['level-66', 'A'],
  ['level-66.4', 'D'],
  ['level-80', 'B'],
])

function Rail() {
  const [current, setCurrent] = useState('level-64')
  return (
    <div style={{ inlineSize: 328 }}>
      <LevelRail
        levels={levels}
        letters={letters}
        factorName="hydration"
        unitOfMeasure="% of flour"
        currentLevelId={current}
        onPick={setCurrent}
      />
    </div>
  )
}

test('every tab says its letter, level and unit, and which one is the usual', async () => {
  const screen = await render(<Rail />)
  await expect.element(screen.getByRole('button', { name: 'A 66 % of flour, usual' })).toBeVisible()
  await expect.element(screen.getByRole('button', { name: 'D 66.4 % of flour' })).toBeVisible()
})

test('arrow keys walk the levels in their order, whatever their letters', async () => {
  const screen = await render(<Rail />)
  await screen.getByRole('button', { name: /^C 64/ }).click()
  await userEvent.keyboard('{ArrowRight}{ArrowRight}')
  await expect
    .element(screen.getByRole('button', { name: /^D 66.4/ }))
    .toHaveAttribute('aria-current', 'true')
  await userEvent.keyboard('{End}{ArrowRight}')
  await expect
    .element(screen.getByRole('button', { name: /^C 64/ }))
    .toHaveAttribute('aria-current', 'true')
})

test('on a phone no two tabs lie over each other', async () => {
  const screen = await render(<Rail />)
  await expect.element(screen.getByRole('button', { name: /^B 80/ })).toBeVisible()
  const boxes = screen
    .getByRole('button')
    .elements()
    .map((button) => button.getBoundingClientRect())
  for (const [index, a] of boxes.entries())
    for (const b of boxes.slice(index + 1)) {
      const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top
      expect(apart).toBe(true)
    }
})

test('options of a choice stand evenly spaced, in hatches', async () => {
  const options = ['Stone', 'Steel', 'Tray'].map((label, index) => ({
    id: label,
    value: null,
    label,
    control: index === 0,
  }))
  const screen = await render(
    <div style={{ inlineSize: 600 }}>
      <LevelRail levels={options} factorName="baked on" unitOfMeasure="" onPick={() => undefined} />
    </div>,
  )
  await expect.element(screen.getByRole('button', { name: 'Tray' })).toBeVisible()
  const middles = () =>
    screen
      .getByRole('button')
      .elements()
      .map((button) => button.getBoundingClientRect())
      .map((box) => Math.round((box.left + box.right) / 2))
  const apart = () => middles().map((middle) => middle - (middles()[0] ?? 0))
  // Three options on 600 px: middles at 100, 300 and 500 px, so 200 px apart.
  await expect.poll(apart).toEqual([0, 200, 400])
  const hatch = (name: string) => {
    const face = screen.getByRole('button', { name }).element().firstElementChild
    if (!face) throw new Error('a tab without a face')
    return getComputedStyle(face, '::after').backgroundImage
  }
  expect(hatch('Steel')).not.toBe(hatch('Tray'))
})

const many = [2, 3, 4, 5, 6, 8, 10, 12].map((value) => ({
  id: `level-${value}`,
  value,
  label: String(value),
  control: value === 6,
}))

function rail(width: number) {
  return (
    <div style={{ inlineSize: width }}>
      <LevelRail levels={many} factorName="proof" unitOfMeasure="h" onPick={() => undefined} />
    </div>
  )
}

test('from seven levels on a phone tabs stand on both sides of the beam in turn', async () => {
  const screen = await render(rail(328))
  await expect.element(screen.getByRole('button', { name: '12 h' })).toBeVisible()
  await vi.waitFor(() => {
    const tops = screen
      .getByRole('button')
      .elements()
      .map((button) => button.getBoundingClientRect().top)
    const [above = 0, below = 0] = tops
    expect(below).toBeGreaterThan(above + 32)
    expect(tops).toEqual(many.map((_, index) => (index % 2 === 0 ? above : below)))
  })
})

test('every tab can be pressed over at least 44 by 44 pixels', async () => {
  const screen = await render(rail(1184))
  await expect.element(screen.getByRole('button', { name: '12 h' })).toBeVisible()
  for (const button of screen.getByRole('button').elements()) {
    const { width, height } = button.getBoundingClientRect()
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44)
  }
})
