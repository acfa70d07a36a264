import { expect, test } from 'vitest'
import { runCommand, scratch } from './run-command.ts'
import { samplePath } from './sample-file.ts'

test('clock says which days of another kind go where the one that was asked for does not', async () => {
  // The loaves take more than six hours: eaten at 11:00 they would be begun in the night.
  const asked = ['clock', samplePath('pan-loaf-salt'), '--eat', '2026-12-05T11:00']
  const { code, out } = await runCommand(...asked)
  expect(code).toBe(0)
  expect(out).toContain('Days of another kind that go too:')
  expect(out.replaceAll(/\s+/g, ' ')).toMatch(
    /- Mix Saturday 0[67]:\d\d, eat 1[23]:\d\d\. You eat .* later than asked\./,
  )
  for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
})

test('what clock cannot do names the option and the mend', async () => {
  const loaf = samplePath('pan-loaf-salt')
  const refused: [string[], string][] = [
    [
      ['--eat', '2026-13-05T18:00'],
      '--eat 2026-13-05T18:00: write day and hour like 2026-12-05T18:00.',
    ],
    [['--eat', '1850-01-01T10:00'], '--eat 1850-01-01T10:00: write a day from 1971 on.'],
    [
      ['--start', '2026-12-05T08:00', '--quiet', '23:00-23:00'],
      '--quiet 23:00-23:00: it ends when it begins. Write hours like 23:00-6:30, or none.',
    ],
    [
      ['--quiet', '22-6'],
      '--quiet: name --eat or --start too; without a date no night lies in the day.',
    ],
    [['--ics', scratch('a.ics')], '--ics: a calendar needs a day; name --eat or --start too.'],
    [
      ['--eat', '2026-12-05T18:00', '--ics', scratch('nowhere/a.ics')],
      'there is no such folder. Name a folder that is there.',
    ],
  ]
  for (const [words, said] of refused) {
    const { code, out, err } = await runCommand('clock', loaf, ...words)
    expect([words, code, out]).toEqual([words, 1, ''])
    expect(err.replaceAll(/\s+/g, ' ')).toContain(said)
  }
})

test('a day that a night parts is said in a sentence, with what it costs and what joins it', async () => {
  const { code, out } = await runCommand(
    'clock',
    samplePath('pan-loaf-salt'),
    '--start',
    '2026-12-04T19:00',
  )
  expect(code).toBe(0)
  expect(out.replaceAll(/\s+/g, ' ')).toMatch(
    /Dough 1.* baked before a night, .* after it: what is baked first is 1\d h.* older at the tasting than what is baked last; all are baked in one go if you start (\d h \d\d min) earlier\. .*- Start \1 earlier\. .*You start \1 earlier than asked\./,
  )
})
