import { afterEach, expect, test, vi } from 'vitest'
import { idleMoment } from '@/app/kit/page/idle-moment.ts'

afterEach(() => vi.unstubAllGlobals())

test('it comes by itself', async () => {
  await expect(idleMoment()).resolves.toBeUndefined()
})

test('it comes within two seconds where the page never rests', async () => {
  const asked: (IdleRequestOptions | undefined)[] = []
  vi.stubGlobal('requestIdleCallback', (go: () => void, options?: IdleRequestOptions) => {
    asked.push(options)
    go()
  })
  await idleMoment()
  expect(asked).toEqual([{ timeout: 2000 }])
})

test('it comes where the browser does not tell', async () => {
  vi.stubGlobal('requestIdleCallback', undefined)
  await expect(idleMoment()).resolves.toBeUndefined()
})
