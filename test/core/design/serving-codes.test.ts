import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chanceFrom } from '@/core/design/chance.ts'
import { codesConflict, dealCodes } from '@/core/design/serving-codes.ts'
import { mostCodes } from '@/core/trial/codes-asked.ts'

const isSwap = (one: string, other: string) =>
  `${one[1]}${one[0]}${one[2]}` === other || `${one[0]}${one[2]}${one[1]}` === other

describe('dealCodes', () => {
  it('keeps every rule over a whole trial: 100 to 999, once, no neighbours swapped', () => {
    fc.assert(
      fc.property(
        fc.nat(),
        fc.array(fc.integer({ min: 1, max: 90 }), { maxLength: 6 }),
        (seed, sizes) => {
          const all: string[] = []
          for (const [session, size] of sizes.entries()) {
            const dealt = dealCodes(chanceFrom(seed, session), size, all)
            if (!dealt.ok) return expect(all.length + size).toBeGreaterThan(mostCodes)
            all.push(...dealt.codes)
          }
          expect(new Set(all).size).toBe(all.length)
          expect(all.every((code) => /^[1-9][0-9]{2}$/.test(code))).toBe(true)
          const swapped = all.filter((one) =>
            all.some((other) => one !== other && isSwap(one, other)),
          )
          expect(swapped).toEqual([])
        },
      ),
      { numRuns: 40 },
    )
  })

  it('reaches all 495 however they are dealt out, then says codes-run-out', () => {
    // By families of three digits: 84 of three different non-zero digits give 3 each (six-ring), 72 of two equal
    // non-zero ones 2 (aab, baa), 9 of three equal 1, 36 of two different and a zero 2, aa0 9 × 1, a00 9 × 1:
    // 252 + 144 + 9 + 72 + 9 + 9 = 495.
    for (const seed of [1, 2, 3]) {
      const used: string[] = []
      for (let session = 0; session < 5; session += 1) {
        const dealt = dealCodes(chanceFrom(seed, session), 99, used)
        expect(dealt.ok).toBe(true)
        if (dealt.ok) used.push(...dealt.codes)
      }
      expect(used).toHaveLength(mostCodes)
      expect(dealCodes(chanceFrom(seed, 9), 1, used)).toEqual({
        ok: false,
        reason: 'codes-run-out',
        asked: 1,
        left: 0,
      })
    }
  })

  it('names what conflicts', () => {
    expect(codesConflict('123', '213')).toBe(true)
    expect(codesConflict('123', '132')).toBe(true)
    expect(codesConflict('123', '321')).toBe(false)
    expect(codesConflict('123', '123')).toBe(true)
  })
})
