import { expect, test } from 'vitest'
import { formulaViews } from '@/core/formula/formula-views.ts'
import { formulaFromText } from '@/core/formula/pasted/formula-from-text.ts'
import type { BakersFormula } from './bakers/bakers-formula.ts'
import { english } from './bakers/english.ts'
import { englishWithParts } from './bakers/english-with-parts.ts'
import { french } from './bakers/french.ts'
import { german } from './bakers/german.ts'
import { italian } from './bakers/italian.ts'

const letters = { F: 'flour', W: 'water', S: 'salt', Y: 'yeast', L: 'liquid', A: 'fat', O: 'other' }

function answerOf(is: string): Record<string, number> {
  const parts = is
    .split(' ')
    .map((part): [string, number] => [
      letters[part[0] as keyof typeof letters],
      Number(part.slice(1)),
    ])
  return Object.fromEntries(parts.filter(([, grams]) => grams > 0))
}

function readOf({ text }: BakersFormula) {
  let count = 0
  const read = formulaFromText(text, () => `i${++count}`)
  const views = read.formula ? formulaViews(read.formula) : null
  const kinds: Record<string, number> = {}
  for (const { kind, grams } of views?.overall ?? []) kinds[kind] = (kinds[kind] ?? 0) + grams
  return { read, views, kinds }
}

const all = [
  ...english.map((one) => ['en', one] as const),
  ...englishWithParts.map((one) => ['en', one] as const),
  ...german.map((one) => ['de', one] as const),
  ...french.map((one) => ['fr', one] as const),
  ...italian.map((one) => ['it', one] as const),
]

test('there are at least 120 formulas, in four languages', () => {
  expect(all.length).toBeGreaterThanOrEqual(120)
})

test.each(all.map(([language, one]) => [language, one.text, one] as const))(
  '%s: %j is read as worked by hand',
  (_, __, formula) => {
    const { read, views, kinds } = readOf(formula)
    const questions = read.items.flatMap((item) => (item.is === 'question' ? [item.why] : []))
    const close = Object.fromEntries(
      Object.entries(answerOf(formula.is)).map(([kind, grams]) => [kind, expect.closeTo(grams, 6)]),
    )
    expect({ kinds, questions, doubts: read.doubts.map(({ what }) => what) }).toEqual({
      kinds: close,
      questions: formula.asks ?? [],
      doubts: formula.doubts ?? [],
    })
    const ahead = Object.fromEntries(
      (views?.preferments ?? []).map((one) => [
        one.name,
        [(one.flourGrams / (views?.flourGrams ?? 1)) * 100, one.hydrationPercent],
      ]),
    )
    const wanted = Object.entries(formula.ahead ?? {}).map(([name, [share, hydration]]) => [
      name,
      [expect.closeTo(share, 6), expect.closeTo(hydration, 6)],
    ])
    expect(ahead).toEqual(Object.fromEntries(wanted))
    if (formula.yeast) {
      const forms = read.formula?.ingredients.flatMap(({ yeastForm }) => yeastForm ?? [])
      expect(new Set(forms)).toEqual(new Set([formula.yeast]))
    }
  },
)

test('every line that has text comes back as something', () => {
  for (const [, formula] of all) {
    const lines = formula.text.split('\n').flatMap((text, at) => (text.trim() ? [at + 1] : []))
    const { read } = readOf(formula)
    expect([...new Set(read.items.map(({ line }) => line))]).toEqual(lines)
  }
})
