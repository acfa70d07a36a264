import { useState } from 'react'
import { flushSync } from 'react-dom'
import { expect, test } from 'vitest'
import { render } from 'vitest-browser-react'
import { LedgerTable } from '@/app/kit/ledger/ledger-table.tsx'
import '@/app/kit/look/tokens.css'
import '@/app/kit/look/base.css'

const columns = ['60', '64', '71'].map((head) => ({ key: head, head, headLength: 2 }))
let write: (figure: string) => void

/** A table far longer than the window, each cell with the figure that was last written. */
function Sheet({ live, narrow = false }: { live: boolean; narrow?: boolean }) {
  const [figure, setFigure] = useState('250.5')
  write = (next) => flushSync(() => setFigure(next))
  const rows = Array.from({ length: 120 }, (_, at) => ({
    key: `row-${at}`,
    head: `flour ${at}`,
    cells: columns.map(() => figure),
  }))
  return (
    <div style={{ inlineSize: narrow ? 220 : 420 }}>
      <LedgerTable caption="Grams" live={live} columns={columns} rows={rows} />
    </div>
  )
}

const figures = () => [...document.querySelectorAll('td')].map((cell) => cell.textContent)
const widths = () =>
  [...document.querySelectorAll('thead th')].map((head) => head.getBoundingClientRect().width)
const frame = () => new Promise((done) => requestAnimationFrame(done))
/** Figures as long as each other, another one with each key. */
const keyed = (key: number) => (100 + key).toFixed(1)

test('what is seen follows at once, what is out of sight a moment later', async () => {
  await render(<Sheet live />)
  let key = 0
  // A line counts as seen until the browser says otherwise, which it does when it has the time.
  await expect
    .poll(() => {
      key += 1
      write(keyed(key))
      return figures().at(-1) === keyed(key)
    })
    .toBe(false)
  expect(figures()[0]).toBe(keyed(key))
  await expect.poll(figures).toEqual(Array.from({ length: 360 }, () => keyed(key)))
})

test('of a line in sight, columns scrolled out of the box follow a moment later', async () => {
  await render(<Sheet live narrow />)
  let key = 0
  await expect
    .poll(() => {
      key += 1
      write(keyed(key))
      return figures()[2] === keyed(key)
    })
    .toBe(false)
  expect(figures().slice(0, 2)).toEqual([keyed(key), keyed(key)])
  await expect.poll(figures).toEqual(Array.from({ length: 360 }, () => keyed(key)))
  const box = document.querySelector('[role=group]') as HTMLElement
  box.scrollLeft = box.scrollWidth
  await expect
    .poll(() => {
      key += 1
      write(keyed(key))
      return figures()[2] === keyed(key)
    })
    .toBe(true)
})

test('a table that is not live follows as a whole', async () => {
  await render(<Sheet live={false} />)
  for (let key = 1; key <= 20; key += 1) {
    await frame()
    write(keyed(key))
    expect(new Set(figures())).toEqual(new Set([keyed(key)]))
  }
})

test('columns grow at once for a longer figure, and do not shrink with the next key', async () => {
  await render(<Sheet live />)
  const before = widths()
  write('9.5')
  expect(widths()).toEqual(before)
  write('100250.55')
  expect((widths()[1] as number) - (before[1] as number)).toBeGreaterThan(20)
  const cell = document.querySelector('td') as HTMLElement
  expect(cell.scrollWidth).toBeLessThanOrEqual(cell.clientWidth)
  const grown = widths()
  write('250.5')
  expect(widths()).toEqual(grown)
})
