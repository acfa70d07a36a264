import { describe, expect, test } from 'vitest'
import { mostEnvelopeBytes, open, seal } from '@/table/envelope.ts'
import { keysOf, secretOf } from '@/table/part-keys.ts'

const master = Uint8Array.from({ length: 32 }, (_, at) => at)
const outside = { table: 'QK7Z', subject: 'b.EL7K2MQ9', count: 3 }

const keysFor = async (login: string) => keysOf(await secretOf(master, login))

describe('what is sealed for a table', () => {
  test('opens with the key of its direction, and says its count', async () => {
    const { out } = await keysFor('EL7K2MQ9')
    const sealed = await seal(out, outside, '{"code":"417"}')
    expect(await open(out, outside, sealed)).toEqual({ ok: true, count: 3, text: '{"code":"417"}' })
  })

  test('does not open with the other direction, another invitation, another table, subject or count', async () => {
    const { out, in: back } = await keysFor('EL7K2MQ9')
    const other = await keysFor('AK4W8PTX')
    const sealed = await seal(out, outside, 'x')
    const no = { ok: false, reason: 'does-not-open' }
    expect(await open(back, outside, sealed)).toEqual(no)
    expect(await open(other.out, outside, sealed)).toEqual(no)
    expect(await open(out, { ...outside, table: 'QK7Y' }, sealed)).toEqual(no)
    expect(await open(out, { ...outside, subject: 'b.AK4W8PTX' }, sealed)).toEqual(no)
    const recounted = Uint8Array.from(sealed)
    new DataView(recounted.buffer).setUint32(1, 4)
    expect(await open(out, outside, recounted)).toEqual(no)
  })

  test('opens with no bit of it turned', async () => {
    const { out } = await keysFor('EL7K2MQ9')
    const sealed = await seal(out, outside, 'x')
    const bits = Array.from({ length: sealed.length * 8 }, (_, bit) => bit)
    const opened = await Promise.all(
      bits.map((bit) => {
        const turned = Uint8Array.from(sealed)
        turned[bit >> 3] = (turned[bit >> 3] ?? 0) ^ (1 << (bit & 7))
        return open(out, outside, turned)
      }),
    )
    expect(opened.filter(({ ok }) => ok)).toEqual([])
  })

  test('junk, cut pieces and what is too large open nothing and throw nothing', async () => {
    const { out } = await keysFor('EL7K2MQ9')
    const sealed = await seal(out, outside, 'x')
    for (const junk of [
      new Uint8Array(),
      sealed.slice(0, 40),
      new Uint8Array(300),
      new Uint8Array(mostEnvelopeBytes + 1),
    ])
      expect((await open(out, outside, junk)).ok).toBe(false)
    const newer = Uint8Array.from(sealed)
    newer[0] = 2
    expect(await open(out, outside, newer)).toEqual({ ok: false, reason: 'newer-version' })
  })

  test('tells of its size only the step: a short and a longer ballot look the same', async () => {
    const { out } = await keysFor('EL7K2MQ9')
    const [short, longer] = [
      await seal(out, outside, 'x'),
      await seal(out, outside, 'x'.repeat(250)),
    ]
    expect(short.length).toBe(longer.length)
    expect(short.length).toBe(17 + 256 + 16)
    expect((await seal(out, outside, 'x'.repeat(253))).length).toBe(17 + 512 + 16)
  })

  test('the same text twice looks different', async () => {
    const { out } = await keysFor('EL7K2MQ9')
    expect(await seal(out, outside, 'x')).not.toEqual(await seal(out, outside, 'x'))
  })

  test('what would not fit into one message is refused before it is sent', async () => {
    const { out } = await keysFor('EL7K2MQ9')
    await expect(seal(out, outside, 'x'.repeat(mostEnvelopeBytes))).rejects.toThrow(RangeError)
  })
})
