import { expect, test } from 'vitest'
import { userEvent } from 'vitest/browser'
import { render } from 'vitest-browser-react'
import { PairsChart } from '@/app/charts/pairs-chart.tsx'
import { ResponseChart } from '@/app/charts/response-chart.tsx'
import { pairPicture } from '@/core/figure/pair-picture.ts'
import { responseChart } from '@/core/figure/response-chart.ts'

const levels = [60, 64, 80].map((value) => ({
  id: `l${value}`,
  value,
  label: String(value),
  control: value === 64,
}))
const chart = responseChart({
  levels,
  response: { scale: { kind: 'nine-point', anchors: [] }, margin: 1 },
  rows: levels.flatMap(({ id }) =>
    [4, 5, 5, 9].map((value) => ({ levelId: id, tasterId: 't1', sessionId: 's1', value })),
  ),
  means: levels.map(({ id }, index) => ({
    levelId: id,
    estimate: 5 + index,
    low: 4 + index,
    high: 6 + index,
  })),
  curve: [60, 70, 80].map((level) => ({ level, fit: 5, low: 4, high: 6 })),
  best: { value: 70, low: 66, high: 74 },
})
const fills = new Map(levels.map(({ id }) => [id, '#778899']))

async function shown() {
  const screen = await render(
    <div style={{ width: 660 }}>
      <ResponseChart
        chart={chart}
        fills={fills}
        label="Liking"
        bestText="best 70"
        marginText="your margin, 1"
        tasterId={null}
        lit={null}
        say={(mean) => `${mean.label}: mean ${mean.estimate}`}
      />
    </div>,
  )
  await expect.element(screen.getByRole('img', { name: '60: mean 5' })).toBeInTheDocument()
  return screen
}

test('every value is a point, and means stand at the true distances of their levels', async () => {
  const { container } = await shown()
  expect(container.querySelectorAll('circle[class*="point"]')).toHaveLength(12)
  const [first, second, third] = [...container.querySelectorAll('g[role="img"]')].map((mark) => {
    const box = mark.getBoundingClientRect()
    return box.x + box.width / 2
  })
  // 64 - 60 = 4 and 80 - 64 = 16: four times as far
  expect(((third ?? 0) - (second ?? 0)) / ((second ?? 1) - (first ?? 0))).toBeCloseTo(4, 1)
})

test('the plot reaches from edge to edge, so that its places are those of the rail above it', async () => {
  const { container } = await shown()
  const box = container.querySelector('[role=group]')?.getBoundingClientRect()
  const mark = container.querySelector('g[role="img"]')?.getBoundingClientRect()
  const at = ((mark?.x ?? 0) + (mark?.width ?? 0) / 2 - (box?.x ?? 0)) / (box?.width ?? 1)
  expect(at).toBeCloseTo(chart.x.positions[0]?.at ?? 0, 2)
})

test('a mean that is reached by keyboard says its numbers', async () => {
  const screen = await shown()
  const before = document.createElement('button')
  screen.container.before(before)
  before.focus()
  await userEvent.tab()
  expect(document.activeElement?.getAttribute('aria-label')).toBe('60: mean 5')
  await expect.element(screen.getByText('60: mean 5')).toBeInTheDocument()
  before.remove()
})

test('pairs stand in rows against the margin; only those that leave zero out are filled', async () => {
  const picture = pairPicture(
    [
      { a: '60', b: '64', difference: 0.5, low: -0.5, high: 1.5 },
      { a: '60', b: '80', difference: 2.5, low: 1.5, high: 3.5 },
    ],
    1,
  )
  const { container } = await render(
    <div style={{ width: 480 }}>
      <PairsChart picture={picture} label="Differences" lit={null} />
    </div>,
  )
  await expect.poll(() => container.querySelectorAll('g[role="img"]').length).toBe(2)
  const kinds = [...container.querySelectorAll('g[role="img"] circle')].map((dot) =>
    dot.getAttribute('class'),
  )
  expect(kinds[0]).not.toBe(kinds[1])
  const area = container.querySelector('[role=group]')?.getBoundingClientRect()
  for (const mark of container.querySelectorAll('g[role="img"]')) {
    const box = mark.getBoundingClientRect()
    expect(box.top).toBeGreaterThanOrEqual((area?.top ?? 0) - 1)
  }
})
