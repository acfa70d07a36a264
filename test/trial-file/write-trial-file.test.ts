import { describe, expect, test } from 'vitest'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** The same document with every object's keys turned round. */
function keysTurned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(keysTurned)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, keysTurned(inner)]),
  )
}

describe('writing a trial file', () => {
  test('F9: reading what was written gives the trial back, and writing that gives the same bytes', () => {
    const whole = wholeTrialOf()
    const text = writeTrialFile(whole, 'for the club')
    const read = readTrialFile(text)
    expect(read).toEqual({ ok: true, whole, note: 'for the club' })
    if (read.ok) expect(writeTrialFile(read.whole, read.note)).toBe(text)
  })

  test('F8: the order of keys and of whole records makes no difference to the bytes', () => {
    const whole = wholeTrialOf()
    const turned = keysTurned(whole) as typeof whole
    turned.events.reverse()
    turned.kitchen.reverse()
    turned.ballots.reverse()
    expect(JSON.stringify(turned)).not.toBe(JSON.stringify(whole))
    expect(writeTrialFile(turned)).toBe(writeTrialFile(whole))
  })

  test('F8: two spaces, keys in the order of the shape, one newline at the end', () => {
    const text = writeTrialFile(wholeTrialOf())
    expect(text.startsWith('{\n  "format": "evenhand-trial",\n  "version": 3,\n  "trial": {')).toBe(
      true,
    )
    expect(text.endsWith('}\n')).toBe(true)
    expect(text.endsWith('\n\n')).toBe(false)
  })

  test('F8: what does not fit the shape is never written', () => {
    const whole = wholeTrialOf()
    whole.trial.seed = -1
    expect(() => writeTrialFile(whole)).toThrow()
  })
})
