import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import { isPresent } from '@/core/findings/reason.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { runCommand, scratch } from './run-command.ts'
import { sampleJson, samplePath } from './sample-file.ts'

const samples = ['focaccia-hydration', 'pan-loaf-salt', 'flatbread-hydration'] as const

async function answered(...words: string[]): Promise<string> {
  const { code, out, err } = await runCommand(...words)
  expect(err).toBe('')
  expect(code).toBe(0)
  return out
}

const schema = (name: string) =>
  new Ajv2020({ strict: false }).compile(JSON.parse(readFileSync(`docs/${name}`, 'utf8')))

describe('check', () => {
  test('says what the focaccia sample holds: 3 sessions × 8 tasters × 5 levels are 120 ballots', async () => {
    const out = await answered('check', samplePath('focaccia-hydration'))
    expect(out).toContain('How wet should our focaccia be?')
    expect(out).toContain('five levels, three sessions')
    expect(out).toContain('120 ballots')
    const facts = JSON.parse(await answered('check', samplePath('focaccia-hydration'), '--json'))
    expect(facts).toMatchObject({ ok: true, sealed: false, levels: 5, sessions: 3, ballots: 120 })
    expect(facts.events).toBe(sampleJson('focaccia-hydration').events.length)
  })

  test.each(samples)(
    '%s: whole for the published schema too, and its plan has no problem',
    async (name) => {
      const fits = schema('trial-file.schema.json')
      expect(fits(sampleJson(name)), JSON.stringify(fits.errors)).toBe(true)
      expect(JSON.parse(await answered('check', samplePath(name), '--json')).problems).toEqual([])
    },
  )
})

describe('weigh', () => {
  // 4 balls of 140 g with 2 % lost: 571.43 g of dough. At 62 %: 100 + 62 + 1.9 + 0.25 + 2 = 166.15 parts,
  // so flour 343.92, water 213.23, salt 6.53, yeast 0.86, oil 6.88 g; whole grams on the bench scale.
  const by62 = {
    'Plain wheat flour': 344,
    Water: 213,
    Salt: 6.53,
    'Instant yeast': 0.86,
    'Sunflower oil': 6.88,
  }

  test('the flatbread at 62 %, worked by hand', async () => {
    const sheet = JSON.parse(await answered('weigh', samplePath('flatbread-hydration'), '--json'))
    const batch = sheet.batches.find(({ planned }: { planned: number }) => planned === 62)
    const grams = Object.fromEntries(
      batch.lines.map((line: { name: string; grams: number }) => [line.name, line.grams]),
    )
    for (const [name, weight] of Object.entries(by62)) expect(grams[name]).toBeCloseTo(weight, 9)
    // the rounded weights make 213 / 344 = 61.92 %
    expect(batch.achieved.value).toBeCloseTo((213 / 344) * 100, 9)
    const text = await answered('weigh', samplePath('flatbread-hydration'))
    expect(text).toMatch(/^Plain wheat flour +355 +344 /m)
    // U = 2 · 61.92 √((0.408/213)² + (0.408/344)²) = 0.28 on a scale of 1 g: one decimal shows its first figure
    expect(text).toMatch(/^Achieved, % +\d\d\.\d +61\.9 /m)
    expect(text).toMatch(/^give or take +0\.\d +0\.3 /m)
  })

  test('the sheet of five levels fits the page, each level with what it is sure to', async () => {
    const text = await answered('weigh', samplePath('focaccia-hydration'))
    for (const line of text.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
    expect(text).toMatch(/^g +66 % +70 % +74 % +78 % +82 %$/m)
    expect(text).toMatch(/^Achieved, %( +\d\d\.\d+){5}\ngive or take( +0\.\d+){5}$/m)
  })

  test('a scale named at the terminal replaces the plan’s', async () => {
    const text = await answered('weigh', samplePath('flatbread-hydration'), '--scale', '5:5000')
    expect(text).toMatch(/^Water +200 +215 +225 +235$/m)
    expect(text).toMatch(/^Instant yeast +0 +0 +0 +0$|Instant yeast: /m)
  })

  test('a weight past what the scales hold is said, in words and as JSON', async () => {
    const asked = ['weigh', samplePath('pan-loaf-salt'), '--scale', '0.01:200'] as const
    // 344 g of flour and 329 g of water on a scale that holds 200 g
    expect((await answered(...asked)).replaceAll(/\s+/g, ' ')).toContain(
      'on 0.01:200, which holds 200 g, weigh Bread flour and Water in two goes each.',
    )
    const { troubles } = JSON.parse(await answered(...asked, '--json'))
    expect(troubles).toMatchObject([
      { trouble: 'over-capacity', name: 'Bread flour', goes: 2 },
      { trouble: 'over-capacity', name: 'Water', goes: 2 },
    ])
  })

  test('a line that is dosed as a dry mix says so', async () => {
    const text = await answered('weigh', samplePath('focaccia-hydration'))
    expect(text).toMatch(/^Instant yeast, dry mix +/m)
  })
})

describe('--units', () => {
  const own = ['--units', 'oz,°F,12h,comma']
  // A weight or temperature of any command, in whatever unit the person did not ask for; levels of these samples are percents.
  const metric = /\d (?:g|kg|°C)\b|\d°C/

  // 1 oz = 28.349523125 g: 11.0115 oz of flour are 312.17 g on the scale of 1 g, which shows 312; 24 °C = 75.2 °F.
  test('writes weights, temperatures, times and decimals as asked', async () => {
    const sheet = await answered('weigh', samplePath('focaccia-hydration'), ...own)
    expect(sheet).toMatch(/^oz +66 %/m)
    expect(sheet).toMatch(/^Strong wheat flour +11,01 /m)
    expect(sheet).toContain('For dough of 75,2 °F.')
    const start = ['--start', '2026-12-04T14:10']
    expect(await answered('clock', samplePath('flatbread-hydration'), ...start, ...own)).toMatch(
      /\b2:10(:00)? pm\b/,
    )
    for (const verb of ['weigh', 'fairness', 'clock', 'report'])
      expect(await answered(verb, samplePath('flatbread-hydration'), ...own)).not.toMatch(metric)
  })

  test('the report says in which units it is written', async () => {
    const out = scratch('ounces.txt')
    await answered('report', samplePath('focaccia-hydration'), '--out', out, ...own)
    const said = readFileSync(out, 'utf8').replace(/\s+/g, ' ')
    expect(said).toContain('weights in ounces (avoirdupois, 1 oz = 28.35 g)')
    expect(said).toContain('temperatures in °F')
  })

  test('an answer for machines stays as it is, and a word that is none is refused by name', async () => {
    const plain = await answered('weigh', samplePath('focaccia-hydration'), '--json')
    expect(await answered('weigh', samplePath('focaccia-hydration'), '--json', ...own)).toBe(plain)
    for (const [asked, said] of [
      ['stone', '“stone”'],
      ['g,oz', '“oz”'],
    ] as const) {
      const { code, err } = await runCommand(
        ...['weigh', samplePath('focaccia-hydration'), '--units', asked],
      )
      expect(code).toBe(1)
      expect(err).toContain(said)
    }
  })
})

describe('findings', () => {
  test.each(samples)('%s: --json fits the published schema', async (name) => {
    const fits = schema('findings.schema.json')
    const document = JSON.parse(await answered('findings', samplePath(name), '--json'))
    expect(fits(document), JSON.stringify(fits.errors)).toBe(true)
  })

  test('the means of liking are plain means of the ballots in the file', async () => {
    const file = sampleJson('focaccia-hydration')
    const document = JSON.parse(
      await answered('findings', samplePath('focaccia-hydration'), '--json'),
    )
    const [plan] = file.plans
    const pieces = new Map(
      file.sessions.flatMap((session: { pieces: { id: string; levelId: string }[] }) =>
        session.pieces.map(({ id, levelId }) => [id, levelId]),
      ),
    )
    const levelOfServing = new Map(
      file.sessions.flatMap((session: { dealt: { servings: { id: string; pieceId: string }[] } }) =>
        session.dealt.servings.map(({ id, pieceId }) => [id, pieces.get(pieceId)]),
      ),
    )
    for (const { level, mean, n } of document.responses[0].levels) {
      const { id } = plan.levels.find((each: { id: string }) => each.id === level)
      const values = file.ballots
        .filter((ballot: { about: { id: string } }) => levelOfServing.get(ballot.about.id) === id)
        .map(
          ({ answers }: { answers: { responseId: string; value: number }[] }) =>
            answers.find(({ responseId }) => responseId === plan.mainResponseId)?.value,
        )
      expect(n).toBe(24)
      expect(values).toHaveLength(24)
      expect(mean).toBeCloseTo(
        values.reduce((sum: number, value: number) => sum + value, 0) / 24,
        10,
      )
    }
  })

  test('a best is named where more is better, and none where neither is', async () => {
    const out = await answered('findings', samplePath('focaccia-hydration'))
    expect(out.replaceAll('\n', ' ')).toMatch(
      /Liking is best in between, somewhere from \d\d to \d\d %/,
    )
    const [, openness = ''] = out.split('Also seen: Openness of crumb')
    expect(openness.split('Also seen: ')[0]).not.toMatch(/best/i)
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(80)
  })

  test('says what was expected, and the guess against the best', async () => {
    const out = (await answered('findings', samplePath('focaccia-hydration'))).replaceAll(
      /\s+/g,
      ' ',
    )
    expect(out).toContain(
      'You expected the best to lie in between; that was borne out, though below your guess of 77 %.',
    )
  })

  test('one session of pan loaves leaves the factor not answerable, and says how many would answer', async () => {
    const document = JSON.parse(await answered('findings', samplePath('pan-loaf-salt'), '--json'))
    expect(document.responses[0].factor).toEqual({ reason: 'needs-two-blocks', sessions: 2 })
    expect(document.responses[0].conclusion).toMatchObject({ rung: 'pieces', shown: [] })
    const out = (await answered('findings', samplePath('pan-loaf-salt'))).replaceAll(/\s+/g, ' ')
    expect(out).toContain('one session cannot speak')
    expect(out).toContain('Two sessions would answer it')
  })

  test('a day half worked has nothing to say yet, and says so once', async () => {
    const out = await answered('findings', samplePath('flatbread-hydration'))
    expect(out).toContain('Nothing can be said of liking yet')
    expect(out).not.toContain('Result:')
  })
})

describe('report', () => {
  test('is printed here without --out: answer, what to bake, doughs, cautions, and no appendix', async () => {
    const out = await answered('report', samplePath('focaccia-hydration'))
    for (const head of [
      'The answer',
      'The doughs',
      'The day',
      'The tasting',
      'Not settled',
      'Next step',
      'Cautions',
    ])
      expect(out).toContain(`\n${head}\n`)
    expect(out).toContain('On Saturday bake 74 %: it stands highest')
    // Weighed in the sample at 74 %: water 259 g in each of three sessions, as the log has it.
    expect(out).toMatch(/^Water +231 +245 +259 +272$/m)
    expect(out).not.toContain('How to check it')
  })

  test('as plain text has the appendix too', async () => {
    const out = scratch('report.txt')
    await answered('report', samplePath('focaccia-hydration'), '--out', out)
    expect(readFileSync(out, 'utf8')).toMatch(/APPENDIX[\s\S]*How to check it/)
  })

  test.each(['html', 'md'])('writes .%s with the numbers that --json gives', async (ending) => {
    const out = scratch(`report.${ending}`)
    expect(await answered('report', samplePath('focaccia-hydration'), '--out', out)).toContain(out)
    const text = readFileSync(out, 'utf8')
    expect(text).toContain('How wet should our focaccia be?')
    expect(text).toContain('Invented data')
    const document = JSON.parse(
      await answered('findings', samplePath('focaccia-hydration'), '--json'),
    )
    for (const { factor, levels } of document.responses) {
      expect(isPresent(factor)).toBe(true)
      expect(text).toContain(decimalText(factor.f, 2))
      for (const { mean } of levels) expect(text).toContain(decimalText(mean, 2))
    }
  })
})
