import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { jsonPlace } from '@/trial-file/json-place.ts'

const parses = (text: string) => {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

describe('the place where a text stops being JSON', () => {
  // Line and column counted by hand in each text.
  test.each([
    ['', 1, 1, 'a value was expected, the file is empty'],
    ['\ufffd\ufffd', 1, 1, 'a value was expected, bytes that are no text stand there'],
    ['{\n  "a": 1,\n}', 3, 1, 'a key in double quotes was expected, “}” stands there'],
    [
      '{\n  "a": 1\n  "b": 2\n}',
      3,
      3,
      'a comma or a closing bracket was expected, “"” stands there',
    ],
    ['[1, 2,, 3]', 1, 7, 'a value was expected, “,” stands there'],
    ['{"a" 1}', 1, 6, 'a colon was expected, “1” stands there'],
    ["{'a': 1}", 1, 2, "a key in double quotes or } was expected, “'” stands there"],
    ['[1]\r\n]', 2, 1, 'the end of the file was expected, “]” stands there'],
    ['["ab\ncd"]', 1, 5, 'more text or its closing quote was expected, control character 10'],
    ['["ab', 1, 5, 'more text or its closing quote was expected, the file ends there'],
    ['[01]', 1, 3, 'a comma or a closing bracket was expected, “1” stands there'],
    ['[NaN]', 1, 2, 'a value or ] was expected, “N” stands there'],
    ['{"a": [1, 2}', 1, 12, 'a comma or a closing bracket was expected, “}” stands there'],
    ['"\\x"', 1, 2, 'more text or its closing quote was expected, “\\” stands there'],
    ['<html>', 1, 1, 'a value was expected, “<” stands there'],
  ])('F2: %j is refused at line %i, column %i', (text, line, column, detail) => {
    expect(jsonPlace(text)).toMatchObject({ line, column })
    expect(jsonPlace(text)?.detail).toContain(detail)
    expect(parses(text)).toBe(false)
  })

  test('F2: exactly what JSON.parse refuses has a place, whatever one edit did to a document', () => {
    const edit = fc.record({
      value: fc.jsonValue({ maxDepth: 3 }),
      at: fc.nat(200),
      cut: fc.nat(2),
      put: fc.oneof(
        fc.constantFrom(...'{}[],:"\\-+.eE0 1\n\tu/ntf\u00a0'),
        fc.string({ maxLength: 2 }),
      ),
    })
    fc.assert(
      fc.property(edit, ({ value, at, cut, put }) => {
        const text = JSON.stringify(value, null, 1)
        const from = Math.min(at, text.length)
        const edited = text.slice(0, from) + put + text.slice(from + cut)
        expect(jsonPlace(edited) === undefined).toBe(parses(edited))
      }),
      { numRuns: 3000, seed: 20260502 },
    )
  })

  test('F2: no depth of brackets exhausts it', () => {
    expect(jsonPlace('['.repeat(200_000))).toMatchObject({ line: 1, column: 200_001 })
  })
})
