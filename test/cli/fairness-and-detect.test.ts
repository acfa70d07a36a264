import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { runCommand, scratch } from './run-command.ts'
import { sampleJson, samplePath } from './sample-file.ts'

const focaccia = samplePath('focaccia-hydration')

/** The focaccia sample had its flour been held: 480 g in every dough. */
function flourHeld(): string {
  const document = sampleJson('focaccia-hydration')
  for (const plan of document.plans) {
    plan.factor.held = 'flour'
    plan.formula.batchSize = { by: 'flour', flourGrams: 480 }
  }
  return scratch('flour-held.json', JSON.stringify(document))
}

describe('fairness', () => {
  test('names what is to be fixed first, with its size and what to do', async () => {
    const { code, out } = await runCommand('fairness', flourHeld())
    expect(code).toBe(0)
    // All planned sessions were worked, so nothing is left to start.
    const headings = ['Mend next time', 'Know about it', 'Fine'].map((one) =>
      out.indexOf(`${one}\n═`),
    )
    expect(headings.every((at) => at > 0)).toBe(true)
    expect(headings).toEqual(headings.toSorted((a, b) => a - b))
    expect(out).toContain('* Hold the dough instead')
    expect(out).toContain('(from the log)')
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
  })

  test('calls for fixing while a planned session is still to be begun', async () => {
    const { out } = await runCommand('fairness', samplePath('flatbread-hydration'))
    expect(out).toContain('Fix before you start\n═')
    expect(out).not.toContain('Mend next time')
  })

  test('answers in JSON, planned and from the log, with sentences', async () => {
    const { out } = await runCommand('fairness', flourHeld(), '--json')
    const items = JSON.parse(out)
    expect(new Set(items.map(({ when }: { when: string }) => when))).toEqual(
      new Set(['before', 'after']),
    )
    const mass = items.find(({ code }: { code: string }) => code === 'piece-mass')
    expect(mass.severity).toBe('fix')
    // The ends differ by 82 − 66 = 16 % of 480 g of flour.
    expect(mass.data.high - mass.data.low).toBeCloseTo(76.8, 6)
    expect(mass.amount.unit).toBe('%')
    expect(mass.remedies).toEqual([{ code: 'hold', held: 'dough' }])
  })

  test('foresees dough temperatures with the mixing work that the logged doughs of the file taught', async () => {
    const items = JSON.parse(
      (await runCommand('fairness', samplePath('flatbread-hydration'), '--json')).out,
    )
    const water = items.find(({ code }: { code: string }) => code === 'water-temperature')
    const untaught = sampleJson('flatbread-hydration')
    untaught.events = untaught.events.filter(({ kind }: { kind: string }) => kind !== 'temperature')
    const file = scratch('untaught.json', JSON.stringify(untaught))
    const others = JSON.parse((await runCommand('fairness', file, '--json')).out)
    const plain = others.find(({ code }: { code: string }) => code === 'water-temperature')
    expect(water.amount.value).not.toBeCloseTo(plain.amount.value, 2)
  })

  test('is still sealed while the codes are, unless the look is known', async () => {
    const document = sampleJson('focaccia-hydration')
    document.events = document.events.filter(({ kind }: { kind: string }) => kind !== 'unsealed')
    const file = scratch('sealed-fairness.json', JSON.stringify(document))
    const refused = await runCommand('fairness', file)
    expect([refused.code, refused.out]).toEqual([1, ''])
    expect(refused.err).toContain('still-sealed')
    expect((await runCommand('fairness', file, '--unseal')).code).toBe(0)
  })
})

describe('detect', () => {
  test('says it in words, in a table of steps, and what the day costs', async () => {
    const { code, out } = await runCommand('detect', focaccia)
    expect(code).toBe(0)
    for (const row of ['As planned', 'Another session', 'Two more tasters', 'One level less'])
      expect(out).toMatch(new RegExp(`^${row} +\\d`, 'm'))
    expect(out).toContain('eight tasters, one flight, three sessions and five levels')
    expect(out).toMatch(/Dough +\d\.\d\d kg in 5 tubs/)
  })

  test('says for line, bend, pairs and ending what would show', async () => {
    const { out } = await runCommand('detect', focaccia)
    expect(out).toMatch(
      /^Of the factor +Rise or fall +In between +Any pair +Ending named +not named$/m,
    )
    expect(out).toMatch(/^As planned +\d\.\d +\d\.\d +\d\.\d +\d+ % +\d+ %$/m)
    expect(out).toContain('Common practice on nine points, without a source: 1.2 between single')
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
  })

  test('goes by the scatter that finished trials of the same tasters teach', async () => {
    // The same again as another trial: every id of it ends otherwise.
    const again = JSON.stringify(sampleJson('focaccia-hydration')).replaceAll(
      /"focaccia-hydration-(\d+)"/g,
      '"focaccia-again-$1"',
    )
    const file = scratch('another-focaccia.json', again)
    const { code, out } = await runCommand('detect', focaccia, '--learn', file)
    expect(code).toBe(0)
    expect(out.replaceAll(/\s+/g, ' ')).toContain(
      'Learned from two finished trials of these tasters: ',
    )
    const own = JSON.parse((await runCommand('detect', focaccia, '--learn', file, '--json')).out)
    const usual = JSON.parse((await runCommand('detect', focaccia, '--json')).out)
    // Made with 0.8 between single answers, where 1.2 are common.
    expect(own.spread.residual).toBeCloseTo(0.8, 0)
    expect(own.detectable.now.thesePieces.wouldShow).toBeLessThan(
      usual.detectable.now.thesePieces.wouldShow,
    )
    const items = JSON.parse(
      (await runCommand('fairness', focaccia, '--learn', file, '--json')).out,
    )
    const tasters = items.find(({ code: one }: { code: string }) => one === 'few-tasters')
    expect(tasters.data.wouldShow).toBeCloseTo(own.detectable.now.thesePieces.wouldShow, 9)
  })

  test('refuses a trial that teaches nothing, and says what it takes', async () => {
    const { code, err } = await runCommand(
      'detect',
      focaccia,
      '--learn',
      samplePath('flatbread-hydration'),
    )
    expect(code).toBe(1)
    expect(err).toContain('It takes two finished trials')
  })

  test('shows less with more sessions, in JSON', async () => {
    const { detectable, refused, dayCost } = JSON.parse(
      (await runCommand('detect', focaccia, '--json')).out,
    )
    expect(refused).toBeNull()
    expect(detectable.anotherSession.theFactor.wouldShow).toBeLessThan(
      detectable.now.theFactor.wouldShow,
    )
    expect([dayCost.ok, dayCost.batches, dayCost.samplesPerSitting]).toEqual([true, 5, 5])
  })

  test('refuses numbers where the main response is on no nine-point scale', async () => {
    const document = sampleJson('focaccia-hydration')
    for (const plan of document.plans) plan.mainResponseId = null
    const file = scratch('no-main.json', JSON.stringify(document))
    const { out } = await runCommand('detect', file)
    expect(out).toContain('Choose the main response first')
    expect(out).toContain('One session asks')
  })

  test('says what a planned tell-apart test could show', async () => {
    const document = sampleJson('focaccia-hydration')
    for (const plan of document.plans)
      plan.tellApart = { test: 'triangle', levelIds: [plan.levels[0].id, plan.levels[1].id] }
    const file = scratch('tell-apart.json', JSON.stringify(document))
    // 24 answers, 8 tasters in 3 sessions: 13 right ones (exact table of the reference, n = 24 at 5 %).
    const { out } = await runCommand('detect', file)
    expect(out.replaceAll(/\s+/g, ' ')).toContain(
      'give 24 answers, one for each taster and session: 13 right',
    )
    const { tellApart } = JSON.parse((await runCommand('detect', file, '--json')).out)
    expect(tellApart).toMatchObject({ answers: 24, needed: 13 })
    expect(JSON.parse((await runCommand('detect', focaccia, '--json')).out).tellApart).toBe(null)
  })

  test('of a sealed trial it tells no question that names a level, as check does', async () => {
    const document = sampleJson('focaccia-hydration')
    for (const plan of document.plans) plan.question = 'Is 66.4 better than 73.2?'
    document.events = document.events.filter(({ kind }: { kind: string }) => kind !== 'unsealed')
    const file = scratch('under-seal.json', JSON.stringify(document))
    for (const verb of ['detect', 'check']) {
      const { code, out } = await runCommand(verb, file)
      expect(code).toBe(0)
      expect(out).not.toMatch(/66\.4|73\.2/)
    }
    expect((await runCommand('detect', file)).out).toContain('A trial under cover')
    const calendar = scratch('under-seal.ics')
    const day = ['--eat', '2026-12-05T18:00', '--ics', calendar]
    for (const more of [[], ['--json']]) {
      const { code, out } = await runCommand('clock', file, ...day, ...more)
      expect(code).toBe(0)
      expect(out).not.toMatch(/66\.4|73\.2/)
    }
    expect(readFileSync(calendar, 'utf8')).not.toMatch(/66\.4|73\.2/)
  })
})
