import { describe, expect, test } from 'vitest'
import { chainsOf } from '@/notebook/chains.ts'
import type { Summary } from '@/notebook/summary-record.ts'

const line = (trialId: string, createdAt: number, from?: string, lastAt = createdAt): Summary => ({
  ...{ trialId, revision: 1, question: `${trialId}?`, factorName: 'water', unitOfMeasure: '%' },
  ...{ levels: [], stage: 'planning', sealed: false, sessionsDone: 0, plannedSessions: 1 },
  ...{ lastAt, createdAt, archived: false, binned: false },
  ...(from === undefined ? {} : { follows: { trialId: from, how: 'narrows' } }),
})
const told = (lines: Summary[]) =>
  chainsOf(lines).map((chain) => chain.map(({ line: { trialId } }) => trialId))

describe('lines of questions', () => {
  test('hold trials that carry one another on, as they were made, the one worked on last first', () => {
    const lines = [
      line('c', 3, 'b'),
      line('alone', 9),
      line('a', 1),
      line('y', 5, 'x', 50),
      line('b', 2, 'a'),
      line('x', 4),
    ]
    expect(told(lines)).toEqual([
      ['x', 'y'],
      ['a', 'b', 'c'],
    ])
    expect(chainsOf(lines)[1]?.map(({ cameFrom }) => cameFrom)).toEqual([null, 'a?', 'b?'])
  })

  test('take in all that carry one trial on; a trial whose forerunner is gone stands alone', () => {
    expect(
      told([line('a', 1), line('b', 2, 'a'), line('c', 3, 'a'), line('d', 4, 'gone')]),
    ).toEqual([['a', 'b', 'c']])
  })

  test('come to an end where trials name each other in a circle, and what leads into it is with them', () => {
    const lines = [line('a', 1, 'c'), line('b', 2, 'a'), line('c', 3, 'b'), line('tail', 4, 'b')]
    expect(told(lines)).toEqual([['a', 'b', 'c', 'tail']])
  })
})
