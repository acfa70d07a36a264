import { expect, test } from 'vitest'
import { most } from '@/core/record/most.ts'
import { fileTroubleText } from '@/core/wording/files/file-trouble-text.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** The sound trial's file with one list of its first plan filled with copies of its first item, each under its own id. */
function crowded(list: 'levels' | 'steps', howMany: number): string {
  const document = JSON.parse(writeTrialFile(wholeTrialOf()))
  const [plan] = document.plans
  const [item] = plan[list]
  plan[list] = Array.from({ length: howMany }, (_, index) => ({ ...item, id: `copy-${index}` }))
  return JSON.stringify(document)
}

test.each([
  ['levels', most.levels + 1, 'a list of at most 12'],
  ['levels', 3000, 'a list of at most 12'],
  ['steps', 3000, 'a list of at most 60'],
] as const)('%s: %i are refused at once, with the most there may be', (list, howMany, expected) => {
  const text = crowded(list, howMany)
  const before = process.cpuUsage()
  const read = readTrialFile(text)
  // Of the processor's own time: a machine that is busy elsewhere makes no file slow.
  expect(process.cpuUsage(before).user).toBeLessThan(2_000_000)
  const trouble = read.ok
    ? undefined
    : read.troubles.find((each) => each.reason === 'shape' && each.pointer === `/plans/0/${list}`)
  expect(trouble).toMatchObject({ expected })
  expect(trouble && fileTroubleText(trouble)).toContain(expected)
})

test('an answer that no number can be reckoned from is refused with its place', () => {
  const document = JSON.parse(writeTrialFile(wholeTrialOf()))
  document.ballots[0].answers[0].value = 1e308
  const read = readTrialFile(JSON.stringify(document))
  const places = read.ok
    ? []
    : read.troubles.flatMap((each) => (each.reason === 'shape' ? [each.pointer] : []))
  expect(places).toContain('/ballots/0/answers/0/value')
})
