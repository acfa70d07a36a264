import { expect, test } from 'vitest'
import { computeReport } from '@/app/worker/compute-report.ts'
import { reportMarkdown } from '@/core/report/report-markdown.ts'
import { sealed } from '@/core/seal/sealed.ts'
import { manner, plainManner } from '@/core/units/manner.ts'
import { sampleTrial } from '../../core/findings/sample-trial.ts'
import { sessionOf } from '../../trial-of/session-of.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

const whole = sampleTrial('flatbread-hydration')

test('the report names the hash it is given, and passes through a message as it is', () => {
  const { document } = computeReport({ whole, manner: plainManner }, 'ab'.repeat(32))
  const text = reportMarkdown(document)
  expect(text).toContain('ab'.repeat(32))
  expect(structuredClone(document)).toEqual(document)
})

test('figures are written as the person chose, and the worker’s own manner stays', () => {
  const ounces = { ...plainManner, mass: 'ounce', decimal: 'comma' } as const
  const text = reportMarkdown(computeReport({ whole, manner: ounces }, null).document)
  expect(text).toMatch(/\d,\d+ oz/)
  expect(text).not.toMatch(/\d g flour/)
  expect(manner()).toBe(plainManner)
})

test('under a seal nothing is written', () => {
  const codesKept = { ...wholeTrialOf(), sessions: [sessionOf()], events: [], photos: [] }
  expect(sealed(codesKept)).toBe(true)
  expect(() => computeReport({ whole: codesKept, manner: plainManner }, null)).toThrow(
    'no report is asked for while codes are kept',
  )
})
