import { commonSpread } from '@/core/design/spread.ts'
import { claims } from '@/core/findings/rehearsal/falsehoods.ts'
import type { MadeTruth, RehearsalDesign } from '@/core/findings/rehearsal/made-trial.ts'
import { type Rehearsal, rehearse } from '@/core/findings/rehearsal/rehearse.ts'
import { effectsOf, trueShapes } from '@/core/findings/rehearsal/true-shapes.ts'

const designs: Omit<RehearsalDesign, 'spread' | 'margin'>[] = [
  { levels: 3, tasters: 5, sessions: 2, flights: 1, unit: 'batch' },
  { levels: 3, tasters: 6, sessions: 4, flights: 1, unit: 'batch' },
  { levels: 4, tasters: 6, sessions: 2, flights: 1, unit: 'batch' },
  { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch' },
  { levels: 5, tasters: 8, sessions: 3, flights: 1, unit: 'batch' },
  { levels: 5, tasters: 8, sessions: 4, flights: 2, unit: 'batch' },
  { levels: 5, tasters: 6, sessions: 6, flights: 1, unit: 'batch' },
  { levels: 4, tasters: 6, sessions: 3, flights: 3, unit: 'piece' },
]
const sizes = { null: 0, rise: 2, inside: 1.6, step: 2, edge: 2 } as const
/** A false claim of each kind, and of the primary question as a whole, may not be made more often; the place is a 95 % set. */
const bounds = { primary: 0.05, 'too-small': 0.05, 'as-good': 0.05, place: 0.05 } as const

/** Further questions about the rules: what happens to the totals when they meet. */
const further: {
  name: string
  design: (typeof designs)[number] & { values?: number[] }
  truth: MadeTruth
}[] = [
  ...[2, 3, 4, 5].map((done) => ({
    name: `looks: after ${done} of 5 sessions, nothing true, a rise expected`,
    design: { levels: 4, tasters: 6, sessions: done, flights: 1, unit: 'batch' as const },
    truth: {
      effects: [0, 0, 0, 0],
      expected: 'rises' as const,
      written: { hoped: null, mostSessions: 5, early: true, againstUsual: false },
    },
  })),
  {
    name: 'unequal spacing (0, 1, 2, 8): nothing true',
    design: { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch', values: [0, 1, 2, 8] },
    truth: { effects: [0, 0, 0, 0], expected: 'best-inside' },
  },
  {
    name: 'unequal spacing (0, 1, 2, 8): best at 1',
    design: { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch', values: [0, 1, 2, 8] },
    truth: { effects: [0.4, 1.6, 1.2, 0], expected: 'best-inside' },
  },
  {
    name: 'scores crowded at the end of the scale (around 8, whole): nothing true',
    design: { levels: 5, tasters: 8, sessions: 3, flights: 1, unit: 'batch' },
    truth: { effects: [0, 0, 0, 0, 0], expected: 'rises', rounded: true, around: 8 },
  },
  {
    name: 'whole scores around 5: nothing true',
    design: { levels: 5, tasters: 8, sessions: 3, flights: 1, unit: 'batch' },
    truth: { effects: [0, 0, 0, 0, 0], expected: 'rises', rounded: true },
  },
  ...[1, 2].flatMap((lost) =>
    [null, 0].map((hoped) => ({
      name: `${lost} of 12 units missing, one best by the whole margin, ${hoped === null ? 'nothing' : 'the easiest'} named: as good is false`,
      design: { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch' as const },
      truth: {
        effects: [0, 0, 0, 2],
        expected: null,
        lost,
        written: { hoped, mostSessions: null, early: false, againstUsual: false },
      },
    })),
  ),
  {
    name: 'one unit of 12 missing: nothing true, a rise expected',
    design: { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch' },
    truth: { effects: [0, 0, 0, 0], expected: 'rises', lost: 1 },
  },
  {
    name: 'one best by the whole margin, the easiest named: as good is false',
    design: { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch' },
    truth: {
      effects: [0, 0, 0, 2],
      expected: null,
      written: { hoped: 0, mostSessions: null, early: false, againstUsual: false },
    },
  },
]

/** How many times as many trials a truth is rehearsed with once a rate lies beyond its bound. */
const timesMore = 10

/**
 * Rehearses the conclusions on made trials of known truth: `npm run rehearse -- [TRIALS] [SEED]`. Prints how often each claim is made, and how often it is false,
 * with its bound. Some 160 rates are held against their bounds, so one beyond by more than three Monte Carlo errors may be chance: its truth is rehearsed again,
 * on ten times as many trials that were not made before. Fails when a bound is passed there too.
 */
export function run([trialsText = '2000', seedText = '1']: string[]): number {
  const [trials, seed] = [Number(trialsText), Number(seedText)]
  if (!Number.isInteger(trials) || trials < 1 || !Number.isInteger(seed) || seed < 0) {
    process.stderr.write('rehearse takes a number of trials and a seed, both whole\n')
    return 2
  }
  print(
    `${trials} made trials of each truth, seed ${seed}, margin 2. Spread: ${JSON.stringify(commonSpread)}`,
  )
  print(
    'Each claim: said in % of trials, and after / falsely; "primary": any false line, bend, size, inside or pair;',
  )
  print(
    '"any": any false claim of all but the place. Bounds: primary, too-small, as-good, place 5 % each.',
  )
  const passed: string[] = []
  for (const [at, design] of designs.entries()) {
    const { levels, tasters, sessions, flights, unit } = design
    print(
      `\n${levels} levels, ${tasters} tasters, ${sessions} sessions, ${flights} flights each, unit ${unit}`,
    )
    print(head())
    for (const shape of trueShapes) {
      const expected = shape === 'inside' ? 'best-inside' : shape === 'null' ? null : 'rises'
      const truth = { effects: effectsOf(shape, levels, sizes[shape]), expected } as const
      const found = rehearse(
        { ...design, spread: commonSpread, margin: 2 },
        truth,
        trials,
        seed + 1000 * at,
      )
      print(row(shape, found))
      if (past(found).length === 0) continue
      const named = `${levels}×${tasters}×${sessions} ${shape}`
      const anew = rehearse(
        { ...design, spread: commonSpread, margin: 2 },
        truth,
        timesMore * trials,
        seed + 1000 * at + 500_000,
      )
      print(`${named}: ${past(found).join(', ')} of ${trials}; ${timesMore * trials} fresh trials:`)
      print(row('again', anew))
      passed.push(...past(anew).map((what) => `${named}: ${what}`))
    }
  }
  print('\nFurther questions')
  for (const { name, design, truth } of further) {
    const found = rehearse({ ...design, spread: commonSpread, margin: 2 }, truth, trials, seed)
    print(`${name}\n${head()}\n${row('', found)}`)
  }
  if (passed.length > 0)
    print(
      `\nBeyond its bound by more than three errors, and again on fresh trials: ${passed.join('; ')}`,
    )
  return passed.length > 0 ? 1 : 0
}

function past(found: Rehearsal): string[] {
  const { trials } = found
  const rates = {
    primary: found.primaryFalse,
    'too-small': found.claims['too-small'].false,
    'as-good': found.claims['as-good'].false,
    place: found.claims.place.false,
  }
  return Object.entries(bounds).flatMap(([what, bound]) => {
    const rate = rates[what as keyof typeof bounds] / trials
    const error = Math.sqrt((bound * (1 - bound)) / trials)
    return rate > bound + 3 * error ? [`${what} ${(100 * rate).toFixed(1)} %`] : []
  })
}

const endings = ['adopt', 'hold', 'again', 'stay'] as const

function head(): string {
  return [
    ''.padEnd(8),
    ...claims.map((claim) => claim.padStart(12)),
    ...['primary', 'any', 'leans', 'pieces', 'rows', ...endings].map((what) => what.padStart(9)),
  ].join('')
}

function row(name: string, found: Rehearsal): string {
  const share = (count: number) => `${((100 * count) / found.trials).toFixed(1)}`
  const { primaryFalse, anyFalse, leans, piecesDiffer, rowsDiffer } = found
  return [
    name.padEnd(8),
    ...claims.map((claim) => {
      const { said, false: wrong } = found.claims[claim]
      return `${share(said)}/${share(wrong)}`.padStart(12)
    }),
    ...[primaryFalse, anyFalse, leans, piecesDiffer, rowsDiffer].map((count) =>
      share(count).padStart(9),
    ),
    ...endings.map((kind) => share(found.endings[kind]).padStart(9)),
  ].join('')
}

function print(line: string): void {
  process.stdout.write(`${line}\n`)
}
