import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { keepProgram } from '@/app/frame/keep-program.ts'
import { offline } from '@/app/services/offline.ts'

type Options = NonNullable<Parameters<Parameters<typeof keepProgram>[0]>[0]>

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
  offline.setState({ ready: false, update: null, taken: false, failure: null })
})

/** A window that was shown the offer, with the version in charge changed at will. */
function offeredWindow({ firstVisit = false } = {}) {
  const version = (name: string) => ({ scriptURL: name }) as ServiceWorker
  const container = Object.assign(new EventTarget(), {
    controller: firstVisit ? null : version('older'),
  })
  const reload = vi.fn()
  const take = vi.fn(async () => undefined)
  let options: Options = {}
  keepProgram(
    (given) => {
      options = given ?? {}
      return take
    },
    { container, reload },
  )
  const inCharge = (name: string) => {
    container.controller = version(name)
    container.dispatchEvent(new Event('controllerchange'))
  }
  return { reload, take, inCharge, options: () => options }
}

test('a newer version that another window took opens this one not anew, though it was offered here too: it says so', () => {
  const { reload, take, inCharge, options } = offeredWindow()
  options().onNeedRefresh?.()
  inCharge('newer')
  // Given, or the library opens the window anew by itself.
  expect(options().onNeedReload).toBeTypeOf('function')
  options().onNeedReload?.()
  vi.runAllTimers()
  expect(reload).not.toHaveBeenCalled()
  expect(take).not.toHaveBeenCalled()
  expect(offline.getState().taken).toBe(true)
})

test('the window that took it opens anew', async () => {
  const { reload, take, inCharge, options } = offeredWindow()
  options().onNeedRefresh?.()
  await offline.getState().update?.()
  expect(take).toHaveBeenCalledOnce()
  inCharge('newer')
  options().onNeedReload?.()
  expect(reload).toHaveBeenCalledOnce()
  expect(offline.getState().taken).toBe(false)
})

test('on a first visit the version that takes charge is that of the page; the next one is another window’s', () => {
  const { inCharge } = offeredWindow({ firstVisit: true })
  inCharge('this one')
  expect(offline.getState().taken).toBe(false)
  inCharge('newer')
  expect(offline.getState().taken).toBe(true)
})
