import { describe, expect, it, test } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { type CsvOptions, scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'
import { csvTroubleText } from '@/core/wording/files/csv-trouble-text.ts'

function scores(text: string, options: CsvOptions = {}) {
  const read = scoresOfCsv(text, options)
  if (!read.ok) throw new Error(JSON.stringify(read.troubles))
  return read.scores
}

function troubles(text: string, options: CsvOptions = {}) {
  const read = scoresOfCsv(text, options)
  return read.ok ? [] : read.troubles
}

describe('loaves made again in no block', () => {
  // Three loaves of each of two flours, volumes 4, 5, 6 and 7, 8, 9: mean square between 3·(1.5² + 1.5²) = 13.5, within
  // (2 + 2)/4 = 1, so F = 13.5 with 1 and 4 degrees of freedom.
  const volumes = [4, 5, 6, 7, 8, 9]
  const head = 'flour,loaf,volume'
  const rows = volumes.map(
    (volume, at) => `${at < 3 ? 'wheat' : 'spelt'},${(at % 3) + 1},${volume}`,
  )
  const text = [head, ...rows].join('\n')
  const level = { role: 'level', column: 'flour' } as const

  it('asks once, with the count and the likely column', () => {
    const asked = troubles(text, { as: [level] })
    expect(asked).toEqual([
      { reason: 'row-twice', row: 3, first: 2, count: 4, column: 'loaf', role: 'replicate' },
    ])
    expect(csvTroubleText(asked[0] as (typeof asked)[0])).toContain(
      '4 rows have the session, flight, level and taster of an earlier one',
    )
  })

  it.each([
    ['the column named', { as: [level, { role: 'replicate', column: 'loaf' }] }],
    [
      'the rows called replicates',
      { as: [level, { role: 'ignore', column: 'loaf' }], repeats: 'replicates' },
    ],
  ] as [string, CsvOptions][])('with %s, the factor is tested against the loaves', (_, options) => {
    const table = scores(text, options)
    expect(table.replicated).toBe(true)
    const [found] = findings(table, { seed: 1, resamples: null }).responses
    expect(found?.factor).toMatchObject({ df1: 1, df2: 4 })
    expect(found && 'f' in found.factor && found.factor.f).toBeCloseTo(13.5, 9)
  })

  it('1,326 rows that repeat make one question', () => {
    const many = Array.from({ length: 1327 }, (_, at) => `60,${at % 7}`)
    const asked = troubles(['level,y', ...many].join('\n'))
    expect(asked).toEqual([{ reason: 'row-twice', row: 3, first: 2, count: 1326, column: null }])
  })

  it('where two columns do it together, the one that tells most apart is asked about first', () => {
    const text =
      'Day,Who,level,y\n1,a,60,5\n1,b,60,6\n1,c,60,6\n2,a,60,4\n2,b,60,5\n2,c,60,7\n1,a,70,5\n1,b,70,5'
    const as = [{ role: 'taster' as const, column: 'Who' }]
    expect(troubles(text)).toMatchObject([{ column: 'Who', role: 'taster', count: 6 }])
    expect(troubles(text, { as })).toMatchObject([{ column: 'Day', role: 'session', count: 3 }])
  })

  it('a day that tells rows apart is a session, a judge a taster; scores never tell', () => {
    const asked = (heading: string) =>
      troubles(`level,${heading},liking\n60,a,5\n60,b,6\n70,a,7\n70,b,8`).map((one) => one.role)
    expect([asked('day'), asked('Judge'), asked('oven_run')]).toEqual([
      ['session'],
      ['taster'],
      ['flight'],
    ])
    expect(troubles('level,liking\n60,5\n60,6').map(({ column }) => column)).toEqual([null])
  })
})

describe('what stands for no value', () => {
  test.each(['', 'NA', 'n/a', '-', '–', 'NaN', '.', 'null'])('%s is missing', (cell) => {
    const table = scores(`level,taster,liking\n60,a,5\n60,b,${cell}\n70,a,7\n70,b,6`)
    expect(table.rows.map(({ values }) => values[0])).toEqual([5, null, 7, 6])
  })

  it('but a taster may be called NA', () => {
    expect(scores('level,taster,y\n60,NA,5\n60,b,6').rows[0]?.taster).toBe('NA')
  })

  it('in a wide table it makes no row', () => {
    const wide = scores('taster,60 %,70 %\na,5,NA\nb,4,6', { tidyAs: 'liking' })
    expect(wide.rows).toHaveLength(3)
  })
})

describe('a first column without a heading', () => {
  it('holds the tasters, long and wide', () => {
    const long = scores(',level,liking\na,60,5\nb,60,6\na,70,7\nb,70,8')
    expect(long.rows.map(({ taster }) => taster)).toEqual(['a', 'b', 'a', 'b'])
    const wide = scores(',60,70\na,5,7\nb,6,8', { tidyAs: 'liking' })
    expect(wide.rows.map(({ taster }) => taster)).toEqual(['a', 'a', 'b', 'b'])
  })

  it('or the row numbers that a program wrote, which are left out', () => {
    const table = scores(',level,taster,liking\n1,60,a,5\n2,70,a,7')
    expect(table.rows.map(({ taster }) => taster)).toEqual(['a', 'a'])
    expect(scores(',level,liking\n1,60,5\n2,70,7').rows[0]?.taster).toBeNull()
  })

  it('blank columns that a spreadsheet adds are none', () => {
    expect(scores('level,liking,,\n60,5,,\n70,7,,').responses.map(({ name }) => name)).toEqual([
      'liking',
    ])
  })
})

describe('a foot row', () => {
  const table = 'taster,level,liking\na,60,5\nb,60,6\na,70,7\nb,70,8\n'

  it.each([
    ['of means', 'Mean,,6.5'],
    ['of averages', 'average,,6.5'],
    ['that names nobody', ',,6.5'],
  ])('%s is asked about, left out or kept', (_, foot) => {
    const text = `${table}${foot}\n`
    expect(troubles(text).filter(({ reason }) => reason === 'foot-row')).toMatchObject([
      { row: 6, count: 1 },
    ])
    expect(scores(text, { foot: 'leave-out' }).rows).toHaveLength(4)
    expect(troubles(text, { foot: 'keep' }).map(({ reason }) => reason)).not.toContain('foot-row')
  })

  it('in a wide table too, and several rows of it', () => {
    const wide = ',60,70\na,5,7\nb,6,8\nMean,5.5,7.5\nSD,0.7,0.7'
    expect(troubles(wide, { tidyAs: 'y' })).toMatchObject([
      { reason: 'foot-row', row: 4, count: 2 },
    ])
    expect(scores(wide, { tidyAs: 'y', foot: 'leave-out' }).rows).toHaveLength(4)
  })

  it('a taster called N is none', () => {
    expect(troubles('taster,level,y\nN,60,5\nb,60,5\nb,70,6\nN,70,7')).toEqual([])
  })
})

describe('levels', () => {
  it.each(['65 %', '65%'])('%s is measured, with its unit, the same long and wide', (written) => {
    const long = scores(`level,y\n60%,5\n${written},6\n70 %,7`)
    expect(long.factor).toMatchObject({ kind: 'measured', unitOfMeasure: '%' })
    expect(long.levels.map(({ name }) => name)).toEqual([60, 65, 70])
    const wide = scores(`taster,60%,${written},70 %\na,5,6,7`, { tidyAs: 'y' })
    expect(wide.factor.unitOfMeasure).toBe('%')
    expect(wide.levels.map(({ name }) => name)).toEqual([60, 65, 70])
  })

  it('65C and 65 °C carry their units; two units are a choice', () => {
    expect(scores('level,y\n60C,5\n65C,6').factor.unitOfMeasure).toBe('C')
    expect(scores('level,y\n230 °C,5\n250 °C,6').factor.unitOfMeasure).toBe('°C')
    expect(scores('level,y\n60 %,5\n65 g,6').factor.kind).toBe('choice')
  })

  it('the control may be written with its unit or without', () => {
    const controls = (control: string) =>
      scores('level,y\n60 %,5\n65 %,6', { control }).levels.map((level) => level.control)
    expect(controls('65%')).toEqual([false, true])
    expect(controls('65')).toEqual([false, true])
  })

  it('product codes can be called a choice, in the order of the file', () => {
    const coded = scores('level,y\n713,5\n208,6', { levelsAre: 'choice', control: 208 })
    expect(coded.factor.kind).toBe('choice')
    expect(coded.levels.map(({ name, control }) => [name, control])).toEqual([
      ['713', false],
      ['208', true],
    ])
  })

  it('A and a are asked about, once a column', () => {
    const text = 'taster,level,y\nA,60,5\na,70,6\nB,60,5\nb,70,6'
    expect(troubles(text)).toEqual([
      { reason: 'alike-names', row: null, column: 'taster', text: 'A” and “a', count: 2 },
    ])
    const tasters = (alike: 'one' | 'two') =>
      new Set(scores(text, { alike }).rows.map(({ taster }) => taster)).size
    expect([tasters('one'), tasters('two')]).toEqual([2, 4])
  })
})

describe('numbers nobody can reckon with', () => {
  it.each(['1e155', '-1e16', '1e-20'])('%s is refused with its place', (cell) => {
    expect(troubles(`level,y\n60,${cell}\n70,5\n70,6`).at(0)).toEqual({
      ...{ reason: 'out-of-reach', row: 2, column: 'y', text: cell },
    })
  })
})

test('no direction is claimed until it is said', () => {
  const table = scores('level,taster,y,z\n60,a,1,2\n70,a,2,1')
  expect(table.responses.map(({ better }) => better.is)).toEqual(['neither', 'neither'])
  expect(scores('level,y\n60,1\n70,2', { better: 'lower' }).responses[0]?.better.is).toBe('lower')
})
