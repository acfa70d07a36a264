import { expect, test } from 'vitest'
import { methodNotes } from '@/core/wording/findings/method-notes.ts'

test.each(Object.entries(methodNotes))(
  'the note on %s says what was done and where it comes from, in words to its reader',
  (_, { title, text, source }) => {
    expect(title).not.toBe('')
    expect(text).toMatch(/\.$/)
    expect(source).toMatch(/[.)]$/)
    // Whether a text was at hand is said as a reader can use it: after textbooks, or that the standard was not consulted.
    expect(source).not.toMatch(/\bseen\b|from memory|\bTODO\b|\?/i)
    if (/\bISO \d|ASTM/.test(source)) expect(source).toMatch(/was not consulted/)
  },
)
