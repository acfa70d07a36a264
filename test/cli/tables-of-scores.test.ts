import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { observationsCsv } from '@/core/report/observations-csv.ts'
import { runCommand, scratch } from './run-command.ts'
import { samplePath, sampleTrial } from './sample-file.ts'

// Two sessions, two levels, two tasters. At 60: 5, 6, 5, 5 (mean 5.25); at 65: 7, 7, 8, 6 (mean 7).
const tidy =
  'session,level,taster,Liking\n1,60,A,5\n1,60,B,6\n1,65,A,7\n1,65,B,7\n2,60,A,5\n2,60,B,5\n2,65,A,8\n2,65,B,6\n'

async function found(file: string, ...options: string[]) {
  const { code, out, err } = await runCommand('findings', file, '--json', ...options)
  expect(err).toBe('')
  expect(code).toBe(0)
  return JSON.parse(out)
}

const meansOf = (document: { responses: { levels: { mean: number }[] }[] }) =>
  document.responses[0]?.levels.map(({ mean }) => mean)

describe('a table of scores from a spreadsheet', () => {
  const utf16 = Buffer.from(`\ufeff${tidy.replaceAll(',', '\t')}`, 'utf16le')
  test.each([
    ['comma.csv', tidy],
    ['semicolon.csv', tidy.replaceAll(',', ';').replace(';7\n', ';7,0\n')],
    ['tab.tsv', tidy.replaceAll(',', '\t')],
    ['mark.csv', `\ufeff${tidy}`],
    ['crlf.csv', tidy.replaceAll('\n', '\r\n')],
    ['unicode.txt', utf16],
  ])('%s gives the same means', async (name, text) => {
    expect(meansOf(await found(scratch(name, text)))).toEqual([5.25, 7])
  })

  test('headings of one’s own are assigned, a column is left out, margin and control are said', async () => {
    const text = tidy
      .replace('session,level,taster', 'Tag,Wasser,Wer')
      .replaceAll(/\n(\d.*)/g, '\n$1,9')
      .replace('Liking', 'Liking,Extra')
    const file = scratch('own.csv', text)
    const as = ['--as', 'session=Tag,level=Wasser', '--as', 'taster=Wer', '--as', 'ignore=Extra']
    const document = await found(file, ...as, '--margin', '0,5', '--control', '60')
    expect(meansOf(document)).toEqual([5.25, 7])
    expect(document.responses).toHaveLength(1)
    expect(document.factor.name).toBe('Wasser')
    expect(document.responses[0].conclusion.tooSmall.margin).toBe(0.5)
    expect(document.responses[0].rows.againstControl).toHaveLength(1)
  })

  test('the main response and which way it is better are said', async () => {
    const lines = tidy.trimEnd().split('\n')
    const chew = ['Chew', 2, 3, 6, 5, 3, 2, 7, 8]
    const file = scratch('two.csv', lines.map((line, at) => `${line},${chew[at]}`).join('\n'))
    const { responses } = await found(
      file,
      '--main',
      'Chew',
      '--better',
      'lower',
      '--better',
      'Liking=higher',
      '--margin',
      '0.5',
      '--margin=Liking=1',
    )
    expect(responses.map(({ name }: { name: string }) => name)).toEqual(['Chew', 'Liking'])
    expect(responses[0].conclusion.tooSmall.margin).toBe(0.5)
    expect(responses[1].conclusion.tooSmall.margin).toBe(1)
    // Chew is higher at 65 for both tasters, liking too.
    const bestOf = (at: number) => responses[at].agreement.map(({ best }: { best: string }) => best)
    expect([bestOf(0), bestOf(1)]).toEqual([
      ['60', '60'],
      ['65', '65'],
    ])
  })

  test('a control below zero is a value, not an option', async () => {
    const file = scratch('cold.csv', tidy.replaceAll(',60,', ',-20,').replaceAll(',65,', ',0,'))
    for (const control of [['--control', '-20'], ['--control=-20']]) {
      const document = await found(file, ...control)
      expect(document.responses[0].rows.againstControl[0].level).toBe('0')
    }
  })

  test('a wide table is recognised and offered, and turned into rows when asked', async () => {
    const file = scratch('wide.csv', 'taster,60 %,65 %,70 %\nA,5,6,7\nB,4,6,6\n')
    const { code, err } = await runCommand('findings', file)
    expect(code).toBe(1)
    expect(err).toContain('60 %, 65 % and 70 %')
    expect(err).toContain('--wide NAME')
    const document = await found(file, '--wide', 'Liking')
    expect(document.responses[0].name).toBe('Liking')
    expect(meansOf(document)).toEqual([4.5, 6, 6.5])
  })

  test('every trouble is told at once with its row and column', async () => {
    const file = scratch('holes.csv', 'level,taster,y\n60,A,good\n60,A,2\n,B,3\n60,C,4\n60,D,5\n')
    const { code, err } = await runCommand('findings', file)
    expect(code).toBe(1)
    expect(err).toContain(`${file}: row 2, column “y”`)
    expect(err).toContain(`${file}: row 3: The same session, flight, level and taster`)
    expect(err).toContain('--repeats replicates')
    expect(err).toContain(`${file}: row 4, column “level”`)
  })
})

describe('awkward tables, asked as their README says', () => {
  const fits = new Ajv2020({ strict: false }).compile(
    JSON.parse(readFileSync('docs/findings.schema.json', 'utf8')),
  )
  const asked: Record<string, Record<string, string | number>> = JSON.parse(
    readFileSync('test/outside/reference/awkward-tables-asked.json', 'utf8'),
  )
  const optionsOf = (name: string) =>
    Object.entries(asked[name] ?? {}).map(([option, value]) => `--${option}=${value}`)

  test.each(Object.keys(asked))('%s: --json fits the published schema', async (name) => {
    const document = await found(`test/outside/reference/awkward/${name}.csv`, ...optionsOf(name))
    expect(fits(document), JSON.stringify(fits.errors)).toBe(true)
  })

  test('numbers are printed as the doubles they are', async () => {
    const [{ levels }] = (
      await found(scratch('thirds.csv', 'taster,level,y\na,1,1\nb,1,1\nc,1,2\na,2,3\n'))
    ).responses
    // 4/3 is no short decimal: all its digits are there
    expect(levels[0].mean).toBe(4 / 3)
  })

  test('a choice is answered in strings at every place, and nothing is said of its slope', async () => {
    const [of] = (await found('test/outside/reference/awkward/a-choice.csv', '--control', 'wheat'))
      .responses
    const names = ['spelt', 'rye', 'wheat', 'emmer']
    expect(of.levels.map(({ level }: { level: string }) => level)).toEqual(names)
    for (const rung of [of.rows, of.pieces, of.factor]) {
      expect(rung.means.map(({ level }: { level: string }) => level)).toEqual(names)
      expect(rung.pairs).toHaveLength(6)
      expect(rung.pairs[0]).toMatchObject({ a: 'spelt', b: 'rye' })
      expect(rung.againstControl.map(({ level }: { level: string }) => level)).toEqual(
        names.filter((name) => name !== 'wheat'),
      )
      expect([rung.trend, rung.best]).toEqual([
        { reason: 'choice-factor' },
        { reason: 'choice-factor' },
      ])
    }
    expect(of.ranks.rankSums.map(({ level }: { level: string }) => level)).toEqual(names)
    expect(of.ranks.page).toEqual({ reason: 'choice-factor' })
    expect(of.bootstrap).toEqual({ reason: 'choice-factor' })
    expect(of.conclusion.place).toEqual({ reason: 'choice-factor' })
  })
})

test('the observations of a trial, read in again as a table, give the same numbers', async () => {
  const whole = sampleTrial('focaccia-hydration')
  const direct = trialFindings(whole, { unsealed: false, resamples: null })
  if (!direct.ok) throw new Error('the sample is unsealed')
  const file = scratch('observations.csv', observationsCsv(whole, direct.scores))
  const table = await found(file, '--control', '74')
  const trial = await found(samplePath('focaccia-hydration'))
  // A table knows its levels by what stands in it, a trial by ids: both are compared by name.
  const named = (document: typeof trial): typeof trial =>
    JSON.parse(JSON.stringify(document), (key, value) =>
      ['level', 'a', 'b'].includes(key) && typeof value === 'string'
        ? document.levels.find(({ id }: { id: string }) => id === value).name
        : value,
    )
  const numbers = (document: typeof trial) =>
    named(document).responses.map(
      ({ name, n, levels, rows, factor }: (typeof trial)['responses'][0]) => ({
        ...{ name, n, levels, f: rows.f, p: rows.p, means: rows.means, pairs: rows.pairs },
        ...{ againstControl: rows.againstControl, trend: rows.trend, factorF: factor.f },
      }),
    )
  expect(trial.responses).toHaveLength(5)
  const close = (value: unknown): unknown =>
    JSON.parse(JSON.stringify(value), (_, each) =>
      typeof each === 'number' ? expect.closeTo(each, 8) : each,
    )
  expect(numbers(table)).toEqual(close(numbers(trial)))
})
