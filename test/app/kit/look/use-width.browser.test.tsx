import { useRef } from 'react'
import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-react'
import { useWidth } from '@/app/kit/look/use-width.ts'

const guessPixels = 640

/** As high as a quarter of its width, so that its size follows what it is told. */
function Measured() {
  const strut = useRef<HTMLDivElement>(null)
  const pixels = useWidth(strut, guessPixels)
  return (
    <div data-measured={pixels} style={{ blockSize: pixels / 4 }}>
      <div ref={strut} />
    </div>
  )
}

const twoIn = (inlineSize: number, display = 'block') => (
  <div style={{ inlineSize, display }}>
    <Measured />
    <Measured />
  </div>
)

const told = () =>
  [...document.querySelectorAll<HTMLElement>('[data-measured]')].map((each) =>
    Number(each.dataset.measured),
  )

/** What stands in the frame that is painted next, read in a task of its own after it. */
const inNextFrame = () =>
  new Promise<number[]>((tell) => requestAnimationFrame(() => setTimeout(() => tell(told()))))

test('the width is known in the first frame that is painted, follows its changes, and no loop is reported', async () => {
  const faults = vi.fn<(event: ErrorEvent) => void>()
  window.addEventListener('error', faults)
  const screen = await render(twoIn(300))
  expect(await inNextFrame()).toEqual([300, 300])
  await screen.rerender(twoIn(517))
  expect(await inNextFrame()).toEqual([517, 517])
  await screen.rerender(twoIn(200))
  expect(await inNextFrame()).toEqual([200, 200])
  window.removeEventListener('error', faults)
  expect(faults).not.toHaveBeenCalled()
})

test('what does not stand on the page yet keeps the guess until it does', async () => {
  const screen = await render(twoIn(300, 'none'))
  expect(await inNextFrame()).toEqual([guessPixels, guessPixels])
  await screen.rerender(twoIn(300))
  expect(await inNextFrame()).toEqual([300, 300])
})
