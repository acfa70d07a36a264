import { describe, expect, it } from 'vitest'
import { type AnswerInput, bestAnswer } from '@/core/findings/best/best-answer.ts'

const bounded = { kind: 'interval', low: 0, high: 1 } as const
const unbounded = { kind: 'everything', low: null, high: null } as const
const slope = (value: number, p: number) => ({ slope: value, se: 1, low: 0, high: 0, p })
const curve = (quadratic: number, vertex: number, bends: boolean): AnswerInput['curve'] => ({
  linear: 0,
  quadratic,
  vertex,
  delta: { low: 0, high: 0 },
  fieller: bends ? bounded : unbounded,
})
const values = [60, 64, 68, 72]
const higher = { is: 'higher' } as const
const lower = { is: 'lower' } as const
const target = { is: 'target', at: 3 } as const

describe('what may be claimed of the best', () => {
  it.each<[string, AnswerInput, string]>([
    [
      'a top inside',
      { curve: curve(-1, 66, true), trend: slope(0, 0.9), values, better: higher },
      'inside',
    ],
    [
      'a top above the levels',
      { curve: curve(-1, 80, true), trend: slope(1, 0.01), values, better: higher },
      'past-high',
    ],
    [
      'a top below the levels',
      { curve: curve(-1, 50, true), trend: slope(-1, 0.01), values, better: higher },
      'past-low',
    ],
    [
      'a bottom inside',
      { curve: curve(1, 66, true), trend: slope(0, 0.9), values, better: higher },
      'least-inside',
    ],
    [
      'a bottom below the levels: rising',
      { curve: curve(1, 50, true), trend: slope(1, 0.01), values, better: higher },
      'past-high',
    ],
    [
      'a bottom above the levels: falling',
      { curve: curve(1, 80, true), trend: slope(-1, 0.01), values, better: higher },
      'past-low',
    ],
    [
      'a bottom inside where lower is better',
      { curve: curve(1, 66, true), trend: slope(0, 0.9), values, better: lower },
      'inside',
    ],
    [
      'a rise where lower is better',
      { curve: curve(0.1, 0, false), trend: slope(1, 0.01), values, better: lower },
      'past-low',
    ],
    [
      'a rise without a sure bend, its top inside',
      { curve: curve(-0.1, 71, false), trend: slope(1, 0.01), values, better: higher },
      'past-high',
    ],
    [
      'neither bend nor slope',
      { curve: curve(-0.1, 66, false), trend: slope(0.1, 0.4), values, better: higher },
      'flat',
    ],
    [
      'no slope to be had',
      {
        curve: curve(-0.1, 66, false),
        trend: { reason: 'level-values-equal' },
        values,
        better: higher,
      },
      'flat',
    ],
  ])('%s', (_, input, answer) => {
    expect(bestAnswer(input)).toBe(answer)
  })

  const met = (at: number[], of: 'line' | 'curve' = 'line') => ({
    target: 3,
    of,
    at,
    stretches: [],
  })
  const rising = { curve: curve(0.01, 0, false), trend: slope(0.1, 0.001), values, better: target }
  const bent = { curve: curve(-1, 66, true), trend: slope(0, 0.9), values, better: target }
  it.each<[string, AnswerInput, string]>([
    ['met between the levels', { ...rising, crossing: met([65]) }, 'inside'],
    ['met above them', { ...rising, crossing: met([75]) }, 'past-high'],
    ['met below them', { ...rising, crossing: met([40]) }, 'past-low'],
    ['met on both sides, nearer above', { ...bent, crossing: met([20, 73], 'curve') }, 'past-high'],
    ['never met, nearest at a top inside', { ...bent, crossing: met([], 'curve') }, 'inside'],
    [
      'not to be told',
      { ...bent, curve: curve(-1, 66, false), crossing: { reason: 'no-slope' } },
      'flat',
    ],
  ])('a target %s', (_, input, answer) => {
    expect(bestAnswer(input)).toBe(answer)
  })
})
