import fc from 'fast-check'
import { generate } from 'lean-qr'
import decodeQR from 'qr/decode.js'
import { describe, expect, test } from 'vitest'
import { bytesOfSlip, readSlip } from '@/slip/ballot-slip.ts'
import { bytesOfDigits, digitsOf } from '@/slip/digits.ts'
import { bytesOfLinkText, linkTextOf } from '@/slip/link-text.ts'
import { packedLines, unpackedLines } from '@/slip/packed-text.ts'
import { bytesOfReturn } from '@/slip/return-slip.ts'
import { slipKey } from '@/slip/slip-key.ts'
import {
  againstTaken,
  type HostOfSlips,
  oddOfReturn,
  readBack,
  type TakenReturn,
} from '@/slip/take-return.ts'
import { nth } from '../core/session/made-session.ts'
import { hostOf, issuedOf, madeReturn, madeSlip, secret } from './made-slip.ts'

const someBytes = fc.uint8Array({ maxLength: 300 })

describe('texts of bytes', () => {
  test('digits and link text give back what was put in, and refuse what is none', () => {
    fc.assert(
      fc.property(someBytes, (bytes) => {
        if (bytes.length > 0) {
          expect(bytesOfDigits(digitsOf(bytes))).toEqual(bytes)
          expect(bytesOfLinkText(linkTextOf(bytes))).toEqual(bytes)
        }
      }),
    )
    // 8.1 bits of a scan code a byte: 17 digits at 10 bits for three, for 7 bytes (by hand: 56.67 / 7).
    expect(digitsOf(new Uint8Array(7))).toHaveLength(17)
    for (const wrong of ['', '12', '999', '12a', '99999999999999999'])
      expect(bytesOfDigits(wrong)).toBeNull()
    for (const wrong of ['', 'a', 'ab+c', 'ab==']) expect(bytesOfLinkText(wrong)).toBeNull()
  })

  test('text that would unpack without end is refused', () => {
    expect(() => packedLines(['x'.repeat(20_000)])).toThrow(RangeError)
    const bomb = packedLines(['x'.repeat(11_000)])
    expect(unpackedLines(bomb)?.[0]).toHaveLength(11_000)
    expect(unpackedLines(Uint8Array.from([1, 2, 3, 4]))).toBeNull()
  })
})

describe('a slip', () => {
  test('carries all it needs and gives it back', () => {
    for (const [servings, asked] of [
      [4, 2],
      [6, 3],
      [13, 4],
      [20, 4],
    ] as const) {
      const slip = madeSlip(servings, asked)
      expect(readSlip(bytesOfSlip(slip))).toEqual({ ok: true, slip })
    }
    for (const ranking of [{ ties: false }, { ties: true, asks: 'Crispest first, please.' }])
      for (const tellApart of [null, { test: 'triangle' as const, asks: 'Which one is odd?' }]) {
        const slip = madeSlip(5, 2, {
          ranking,
          tellApart,
          sets: tellApart ? [['411', '522', '633']] : [],
        })
        expect(readSlip(bytesOfSlip(slip))).toEqual({ ok: true, slip })
      }
    const asBaked = madeSlip(5, 2, { asTheyCome: true, warmUpCode: null })
    expect(readSlip(bytesOfSlip(asBaked))).toEqual({ ok: true, slip: asBaked })
    const bare = madeSlip(2, 1, { sets: [], tellApart: null, warmUpCode: null, allergens: [] })
    expect(readSlip(bytesOfSlip(bare))).toEqual({ ok: true, slip: bare })
  })

  // 268 bytes are what a version 10 scan code at its lowest correction holds as text of an address (ISO/IEC 18004: 271
  // bytes in byte mode, less its head): the largest that a phone 30 cm away still reads.
  test('keeps within a scan code up to 13 servings and four questions', () => {
    expect(bytesOfSlip(madeSlip(4, 2)).length).toBeLessThanOrEqual(200)
    expect(bytesOfSlip(madeSlip(13, 4)).length).toBeLessThanOrEqual(268)
    expect(bytesOfSlip(madeSlip(13, 4, { asTheyCome: true })).length).toBeLessThanOrEqual(268)
    expect(bytesOfReturn(madeReturn(madeSlip(4, 2)), madeSlip().key).length).toBeLessThanOrEqual(
      110,
    )
    expect(bytesOfReturn(madeReturn(madeSlip(20, 4)), madeSlip().key).length).toBeLessThanOrEqual(
      268,
    )
  })

  test('cut or mistyped it is incomplete, never half read', () => {
    const bytes = bytesOfSlip(madeSlip())
    for (let length = 0; length < bytes.length; length += 1)
      expect(readSlip(bytes.slice(0, length)).ok).toBe(false)
    for (let at = 0; at < bytes.length; at += 1)
      expect(readSlip(bytes.map((byte, index) => (index === at ? byte ^ 1 : byte))).ok).toBe(false)
  })
})

describe('a return', () => {
  const slip = madeSlip(6, 4)
  const back = madeReturn(slip)
  const bytes = bytesOfReturn(back, slip.key)
  const text = digitsOf(bytes)

  test('comes back whole as code, link or file', () => {
    for (const way of [
      text,
      linkTextOf(bytes),
      `https://club.example/#/back/${linkTextOf(bytes)}\n`,
    ]) {
      const read = readBack(way, hostOf(slip))
      expect(read).toMatchObject({ ok: true, back })
    }
  })

  test('brings an order back, and fits only a slip that asked for it, whole and with places shared where they may be', () => {
    const asked = madeSlip(3, 1, { ranking: { ties: true } })
    const apart = madeSlip(3, 1, { ranking: { ties: false } })
    const read = (ranked: number[][], of = asked) =>
      readBack(digitsOf(bytesOfReturn(madeReturn(of, { ranked }), of.key)), hostOf(of))
    const shared = [[2], [0, 1]]
    expect(read(shared)).toMatchObject({ ok: true, back: { ranked: shared } })
    expect(read([[2], [0], [1]], apart)).toMatchObject({ ok: true })
    for (const [ranked, of] of [
      [shared, apart],
      [[[2], [0]], asked],
      [[[2], [0], [1], [1]], asked],
      [[[2], [0], [3]], asked],
      [[[2], [], [0, 1]], asked],
      [shared, madeSlip(3, 1)],
    ] as const)
      expect(
        read(
          ranked.map((place) => [...place]),
          of,
        ),
      ).toEqual({
        ok: false,
        reason: 'does-not-fit',
      })
  })

  test('every changed bit and digit is refused', () => {
    for (let at = 0; at < bytes.length * 8; at += 1) {
      const turned = bytes.map((byte, index) => (index === at >> 3 ? byte ^ (1 << (at & 7)) : byte))
      expect(readBack(digitsOf(turned), hostOf(slip)).ok).toBe(false)
    }
    for (let at = 0; at < text.length; at += 1) {
      const digit = (Number(text[at]) + 1) % 10
      expect(readBack(`${text.slice(0, at)}${digit}${text.slice(at + 1)}`, hostOf(slip)).ok).toBe(
        false,
      )
    }
  })

  test('foreign, altered, stale and unfitting are told apart, in this order', () => {
    const reason = (given: string, host = hostOf(slip)) => {
      const read = readBack(given, host)
      return read.ok ? 'ok' : read.reason
    }
    expect(reason('hello')).toBe('not-a-return')
    expect(reason(digitsOf(Uint8Array.from([9, ...bytes.slice(1)])))).toBe('newer-version')
    expect(reason(text, { ...hostOf(slip), tag: 7 })).toBe('other-tasting')
    const asFourth = digitsOf(bytesOfReturn({ ...back, slot: 4 }, slip.key))
    expect(reason(asFourth, hostOf(slip, madeSlip(6, 4, { slot: 4 })))).toBe('altered')
    const anew = madeSlip(6, 4, { issue: 1 })
    expect(reason(text, hostOf(anew))).toBe('stale')
    const shorter = madeSlip(3, 4)
    expect(reason(text, hostOf({ ...shorter, key: slip.key }))).toBe('does-not-fit')
  })

  test('against what is in already: the same, older, later, or of another phone', () => {
    const taken = [{ tasterId: 'ta-3', nonce: back.nonce, revision: 2 }]
    const at = (nonce: number, revision: number) => againstTaken({ nonce, revision }, 'ta-3', taken)
    expect(at(back.nonce, 2)).toBe('already-in')
    expect(at(back.nonce, 1)).toBe('older')
    expect(at(back.nonce, 3)).toBe('replaces')
    expect(at(5, 1)).toBe('other-answers')
    expect(againstTaken({ nonce: 5, revision: 1 }, 'ta-4', taken)).toBe('first')
  })

  test('of eight phones every return finds its taster; one sent twice, one altered and one of another tasting are told apart', () => {
    const slips = Array.from({ length: 8 }, (_, slot) => madeSlip(4, 2, { slot }))
    const host: HostOfSlips = {
      ...hostOf(),
      tag: nth(slips, 0).tag,
      issued: slips.map((each, at) => issuedOf(each, `ta-${at}`)),
    }
    const returns = slips.map((each, at) => madeReturn(each, { nonce: 100 + at }))
    const sent = returns.map((each, at) => digitsOf(bytesOfReturn(each, nth(slips, at).key)))
    const taken: TakenReturn[] = []
    for (const [at, one] of [...sent, nth(sent, 2)].entries()) {
      const read = readBack(one, host)
      if (!read.ok) throw new Error(read.reason)
      const tasterId = read.issued.tasterId ?? ''
      expect(tasterId).toBe(`ta-${at === 8 ? 2 : at}`)
      expect(againstTaken(read.back, tasterId, taken)).toBe(at === 8 ? 'already-in' : 'first')
      taken.push({ tasterId, nonce: read.back.nonce, revision: read.back.revision })
    }
    const altered = bytesOfReturn(nth(returns, 5), nth(slips, 5).key).map((byte, at) =>
      at === 20 ? byte ^ 4 : byte,
    )
    expect(readBack(digitsOf(altered), host)).toEqual({ ok: false, reason: 'altered' })
    const foreign = { ...nth(returns, 1), tag: 7 }
    expect(readBack(digitsOf(bytesOfReturn(foreign, nth(slips, 1).key)), host)).toEqual({
      ok: false,
      reason: 'other-tasting',
    })
  })

  test('another order than dealt and impossible times are kept and said', () => {
    expect(oddOfReturn(back, true)).toEqual([])
    const turned = back.servings.toReversed()
    expect(oddOfReturn({ servings: turned }, true)).toEqual(['out-of-order'])
    expect(oddOfReturn({ servings: turned }, false)).toEqual([])
    const early = back.servings.map((serving) => ({ ...serving, sealedSeconds: 0 }))
    expect(oddOfReturn({ servings: early }, true)).toContain('times')
  })

  test('a key answers for its own slot and issue alone', () => {
    const keys = [slipKey(secret, 3, 0), slipKey(secret, 4, 0), slipKey(secret, 3, 1)]
    expect(new Set(keys.map((key) => linkTextOf(key))).size).toBe(3)
  })
})

test('a code drawn of either is read back from its picture', () => {
  for (const [text, correction] of [
    [`https://club.example/#/slip/${linkTextOf(bytesOfSlip(madeSlip(6, 3)))}`, 'L'],
    [digitsOf(bytesOfReturn(madeReturn(madeSlip(6, 3)), madeSlip(6, 3).key)), 'M'],
  ] as const) {
    expect(correction).toMatch(/[LM]/)
    const code = generate(text)
    const [margin, pixels] = [4, 4]
    const side = (code.size + 2 * margin) * pixels
    const data = new Uint8ClampedArray(side * side * 4).fill(255)
    for (let y = 0; y < side; y += 1)
      for (let x = 0; x < side; x += 1) {
        const [column, row] = [Math.floor(x / pixels) - margin, Math.floor(y / pixels) - margin]
        if (code.get(column, row)) data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3)
      }
    expect(decodeQR({ width: side, height: side, data })).toBe(text)
  }
})
