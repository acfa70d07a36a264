import { describe, expect, test } from 'vitest'
import { findRoot } from '@/core/statistics/roots/find-root.ts'
import { polynomialAt, realRoots } from '@/core/statistics/roots/polynomial-roots.ts'

describe('where a function crosses zero', () => {
  test('known roots', () => {
    expect(findRoot((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 14)
    expect(findRoot((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 14) // Dottie number
    expect(findRoot((x) => (x - 1) ** 9, 0.3, 1.9)).toBeCloseTo(1, 1)
    expect(findRoot((x) => x, 0, 5)).toBe(0)
    expect(findRoot((x) => x - 5, 0, 5)).toBe(5)
  })

  test('a smooth function is looked at few times, where halving the bracket would take 50', () => {
    let looks = 0
    const counted = (x: number) => {
      looks += 1
      return Math.exp(x) - 3
    }
    expect(findRoot(counted, 0, 2)).toBeCloseTo(Math.log(3), 14)
    expect(looks).toBeLessThan(14)
  })

  test('a bracket without a change of sign throws', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError)
  })
})

describe('real roots of a polynomial', () => {
  test('built from known roots', () => {
    // (x − 1)(x − 2)(x − 3)(x + 4) = x⁴ − 2x³ − 13x² + 38x − 24
    const roots = realRoots([-24, 38, -13, -2, 1])
    expect(roots).toEqual([-4, 1, 2, 3].map((root) => expect.closeTo(root, 12)))
    expect(realRoots([2, -3, 1])).toEqual([expect.closeTo(1, 13), expect.closeTo(2, 13)])
  })

  test('none, a constant, a line, vanishing leading coefficients', () => {
    expect(realRoots([1, 0, 1])).toEqual([])
    expect(realRoots([5])).toEqual([])
    expect(realRoots([6, -2])).toEqual([3])
    expect(realRoots([6, -2, 1e-30])).toEqual([3])
  })

  test('Horner', () => {
    expect(polynomialAt([1, 2, 3], 2)).toBe(17)
  })
})
