import fc from 'fast-check'
import { expect, it } from 'vitest'
import { chanceFrom } from '@/core/design/chance.ts'
import { commonSpread } from '@/core/design/spread.ts'
import { madeTrial } from '@/core/findings/rehearsal/made-trial.ts'
import { normalDraws } from '@/core/findings/rehearsal/normal-draws.ts'
import { effectsOf, trueShapes } from '@/core/findings/rehearsal/true-shapes.ts'
import { evidencePage } from './evidence-page.ts'

/** Pairs of things that one page must never say together. */
const exclusive: [string, RegExp, RegExp][] = [
  ['settled and not', /^Not settled|nothing is settled/, /It holds (for these tasters )?whenever/],
  [
    'adopt and bake again',
    /Adopt \S|take the easiest/,
    /Bake again|Repeat it|ask it again|Ask it again/,
  ],
  ['adopt and stay', /Adopt \S|take the easiest/, /Stay with your usual|Change nothing for now/],
  [
    'nothing shown, yet borne out',
    /Not settled|nothing is settled|No difference in \S+ was shown/,
    /expected it to (rise|fall)[^;]*; that was borne out|in between[^;]*; that was borne out/,
  ],
  [
    'nothing shown, yet unexpected',
    /Not settled|nothing is settled|No difference in \S+ was shown/,
    /Unexpected|was not expected/,
  ],
  ['shown and repeat', /It holds (for these tasters )?whenever/, /Repeat it|Bake again/],
  [
    'best in between and at an end',
    /is best in between/,
    /perhaps at or past|better still may lie past|anywhere in the range/,
  ],
  [
    'as good and not shown to be',
    /is as good as (the best|any other)|is the easiest that is as good/,
    /No level is shown to be as good|is not shown to be as good/,
  ],
  ['no difference and a difference', /No difference in \S+ was shown/, /The factor: shown/],
  ['confirm and repeat', /Confirm it\.|Ask it again\./, /Repeat it\.|Bake again\./],
  ['adopt and confirm', /Adopt \S+\./, /Confirm it\.|Ask it again\./],
  [
    // Of two things shown the second may be the surprise, and is called so.
    'it holds and was not expected',
    /It holds (for these tasters )?whenever(?!.*that was not expected)/,
    /; instead [^.]*\. Unexpected: ask it again/,
  ],
  ['borne out and instead', /that was borne out/, /; instead/],
  [
    'one session speaks of the factor',
    /one session cannot speak/,
    /It holds (for these tasters )?whenever/,
  ],
  ['freshness may have done it, yet borne out', /cannot be told apart here/, /borne out|It holds/],
  [
    'nothing shown, yet a best',
    /^Not settled|nothing is settled|No difference in \S+ was shown/,
    /is the best of the levels tried|Of the levels tried/,
  ],
  ['bake the usual, yet adopt', /Bake your usual/, /Adopt \S|take the easiest|Unexpected/],
  ['nothing shown, yet a pair', /What would have shown\./, /differs? from|It holds/],
  ['nothing would show, yet shown', /What would have shown\./, /The factor: shown/],
  ['hold and adopt', /make it again before you adopt it|before you adopt it/, /Adopt \S+ ?%?: /],
]

const trials = fc.record({
  seed: fc.integer({ min: 1, max: 1_000_000_000 }),
  shape: fc.constantFrom(...trueShapes),
  size: fc.double({ min: 0, max: 6, noNaN: true }),
  down: fc.boolean(),
  levels: fc.integer({ min: 2, max: 6 }),
  tasters: fc.integer({ min: 1, max: 8 }),
  sessions: fc.integer({ min: 1, max: 5 }),
  flights: fc.integer({ min: 1, max: 2 }),
  unit: fc.constantFrom('batch' as const, 'piece' as const),
  margin: fc.constantFrom(null, 0.5, 1, 2, 4),
  expected: fc.constantFrom(
    null,
    'rises' as const,
    'falls' as const,
    'best-inside' as const,
    'no-difference' as const,
  ),
  better: fc.constantFrom('higher' as const, 'lower' as const, 'neither' as const),
  hoped: fc.constantFrom(null, 0, 1),
  most: fc.constantFrom(null, 2, 3, 5),
  early: fc.boolean(),
  againstUsual: fc.boolean(),
  calm: fc.boolean(),
  following: fc.boolean(),
  lost: fc.integer({ min: 0, max: 12 }),
})

/** A few runs in the suite; `RUNS=5000` for thousands. */
const numRuns = Number(process.env.RUNS ?? 250)

it(
  'no page says two things that exclude each other',
  () => {
    const met = new Set<string>()
    fc.assert(
      fc.property(trials, (one) => {
        const page = evidencePage(pageScores(one))
        const text = Object.values(page).flat()
        const whole = text.join('\n')
        expect(whole).not.toMatch(/NaN|undefined|null|Infinity|\.\.| {2}/)
        for (const [what, first, second] of exclusive) {
          if (text.some((line) => first.test(line))) met.add(`${what} 1`)
          if (text.some((line) => second.test(line))) met.add(`${what} 2`)
          const both =
            text.some((line) => first.test(line)) && text.some((line) => second.test(line))
          expect(both, `${what}:\n${whole}`).toBe(false)
        }
        // That pieces often differ without the factor is said once where they do and it is not shown, else never.
        const differ = /^These (pieces|doughs) differ/.test(page.headline)
        const often = whole.match(/even when factor does nothing|for no reason of factor/g) ?? []
        expect(often, whole).toHaveLength(differ ? 1 : 0)
      }),
      { numRuns, seed: Number(process.env.SEED ?? 11) },
    )
    // Each of the two things is said on some page, else the check of their meeting could not fail.
    expect(
      exclusive.flatMap(([what]) => [`${what} 1`, `${what} 2`]).filter((each) => !met.has(each)),
    ).toEqual([])
  },
  numRuns * 500,
)

function pageScores(one: typeof trials extends fc.Arbitrary<infer Trial> ? Trial : never) {
  const { levels, tasters, sessions, flights, unit, shape, size, down } = one
  const spread = one.calm
    ? { residual: 0.3, tasterLevel: 0.2, piece: 0.1, batch: 0.1 }
    : commonSpread
  const effects = effectsOf(shape, levels, down ? -size : size)
  const scores = madeTrial(
    { ...{ levels, tasters, sessions, flights, unit }, spread, margin: 1 },
    {
      effects,
      expected: one.expected,
      written: {
        hoped: one.hoped,
        mostSessions: one.most,
        early: one.early,
        againstUsual: one.againstUsual,
      },
    },
    normalDraws(chanceFrom(one.seed)),
  )
  const response = { ...scores.responses[0], better: { is: one.better }, margin: one.margin }
  return {
    ...scores,
    responses: [response as (typeof scores.responses)[number]],
    rows: scores.rows
      .filter((_, at) => one.lost === 0 || (at + one.seed) % (one.lost + 3) !== 0)
      .map((row) => ({ ...row, minutes: one.following ? 20 + 60 * row.level : null })),
  }
}
