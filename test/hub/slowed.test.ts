import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { expect, test } from 'vitest'
import { Slowed } from '@/hub/slowed.ts'

test('what is sent faster than allowed waits, and nothing of it is lost', async () => {
  const begun = performance.now()
  const got: Buffer[] = []
  await pipeline(
    Readable.from(Array.from({ length: 40 }, (_, at) => Buffer.alloc(100, at))),
    new Slowed({ rushBytes: 1000, bytesPerSecond: 20_000 }),
    async (pieces: AsyncIterable<Buffer>) => {
      for await (const piece of pieces) got.push(piece)
    },
  )
  // 4000 bytes, of them 1000 at once: the others take 3000 / 20 000 s.
  expect(performance.now() - begun).toBeGreaterThan(140)
  expect(Buffer.concat(got)).toEqual(
    Buffer.concat(Array.from({ length: 40 }, (_, at) => Buffer.alloc(100, at))),
  )
})
