import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { runCommand, scratch } from './run-command.ts'
import { sampleJson, samplePath } from './sample-file.ts'

const focaccia = samplePath('focaccia-hydration')

/** The sample under another identity, changed by hand. */
function other(name: string, change: (trial: ReturnType<typeof sampleJson>) => void): string {
  const text = readFileSync(focaccia, 'utf8')
  const id = sampleJson('focaccia-hydration').trial.id
  const trial = JSON.parse(text.replaceAll(`"${id}"`, '"another-kitchen"'))
  change(trial)
  return scratch(name, JSON.stringify(trial))
}

test('the same doughs from another kitchen make one answer, each session a block of its own', async () => {
  const again = other('again.json', () => undefined)
  const { code, out, err } = await runCommand('pool', focaccia, again, '--json')
  expect({ code, err }).toEqual({ code: 0, err: '' })
  const pooled = JSON.parse(out)
  // 3 sessions × 5 levels twice: 30 unit means, less 6 blocks, less 4 for the levels: 20 degrees of freedom.
  expect(pooled.model.levels).toMatchObject({ ok: true, df1: 4, df2: 20 })
  // Twice the same trial cannot disagree: F of trial × level is nothing; 4 levels' worth against 2 × 8.
  expect(pooled.model.heterogeneity).toMatchObject({ ok: true, df1: 4, df2: 16 })
  expect(pooled.model.heterogeneity.f).toBeCloseTo(0, 9)
  const { out: said } = await runCommand('pool', focaccia, again)
  expect(said.replace(/\s+/g, ' ')).toContain('each session of each trial a block')
})

test('a formula that differs in more than the factor is refused with the difference', async () => {
  const salty = other('salty.json', (trial) => {
    for (const plan of trial.plans)
      for (const one of plan.formula.ingredients) if (one.kind === 'salt') one.percent = 3
  })
  const { code, err } = await runCommand('pool', focaccia, salty)
  expect(code).toBe(1)
  expect(err).toContain('salt: 3 % of flour against 2.2 %')
})

test('of trials of which one is sealed no difference of their formulas is told', async () => {
  const sealed = other('salty-sealed.json', (trial) => {
    for (const plan of trial.plans)
      for (const one of plan.formula.ingredients) if (one.kind === 'salt') one.percent = 3
    trial.events = trial.events.filter(({ kind }: { kind: string }) => kind !== 'unsealed')
  })
  for (const files of [
    [focaccia, sealed],
    [sealed, focaccia],
  ]) {
    const { err } = await runCommand('pool', ...files)
    expect(err).toContain('still-sealed')
    expect(err).not.toContain('salt: ')
  }
})

test('another factor, one file alone and one trial twice are refused', async () => {
  expect((await runCommand('pool', focaccia, samplePath('pan-loaf-salt'))).err).toContain(
    'the factor: ',
  )
  expect((await runCommand('pool', focaccia)).err).toContain('two trial files or more')
  expect((await runCommand('pool', focaccia, focaccia)).err).toContain(
    'the same trial stands there twice',
  )
})

test('a verb for one file still refuses a second', async () => {
  expect((await runCommand('check', focaccia, focaccia)).err).toContain('one file at a time')
})
