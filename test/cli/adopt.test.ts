import { expect, test } from 'vitest'
import { houseShape } from '@/core/house/house-record.ts'
import { runCommand } from './run-command.ts'
import { samplePath } from './sample-file.ts'

const flatbread = samplePath('flatbread-hydration')

test('six pieces of 280 g of the flatbread at 62 %, by hand', async () => {
  // 1680 g of dough over 166.15 parts: flour 1011.13, water 626.90, salt 19.21, yeast 2.528, oil 20.22 g.
  const { code, out, err } = await runCommand(
    'adopt',
    flatbread,
    '--level',
    '62',
    '--pieces',
    '6',
    '--mass',
    '280',
  )
  expect({ code, err }).toEqual({ code: 0, err: '' })
  expect(out).toContain('For six pieces of 280 g.')
  for (const line of [
    /flour +100 +1011/,
    /Water +62 +627/,
    /Salt +1\.9 +19\.21/,
    /yeast +0\.25 +2\.53/,
    /oil +2 +20\.22/,
  ])
    expect(out).toMatch(line)
})

test('the record it prints has the shape the notebook keeps', async () => {
  const { out } = await runCommand(
    'adopt',
    samplePath('focaccia-hydration'),
    '--json',
    '--flour',
    '1 kg',
  )
  const { house } = JSON.parse(out)
  expect(houseShape.parse(house).revisions[0]?.yield).toEqual({ by: 'flour', flourGrams: 1000 })
  expect(house.revisions[0].restsOn[0]).toMatchObject({
    sessions: 3,
    tasters: 8,
    because: 'easiest',
  })
})

test.each([
  [['--level', '63'], 'no level of this trial'],
  [['--level', '62', '--pieces', '6'], 'go together'],
  [['--level', '62', '--pieces', '2.5', '--mass', '280'], 'whole number'],
  [['--level', '62', '--flour', '0'], 'from 1 to 1000000 g'],
  [['--level', '62', '--flour', '500', '--pieces', '6', '--mass', '280'], 'not both'],
])('%j is refused with the mend', async (words, said) => {
  const { code, err } = await runCommand('adopt', flatbread, ...words)
  expect(code).toBe(1)
  expect(err).toContain(said)
})
