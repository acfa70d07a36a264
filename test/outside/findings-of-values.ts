import { expect } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { isPresent } from '@/core/findings/reason.ts'
import type { LevelName, ScoreRow, ScoreTable } from '@/core/findings/table/score-table.ts'
import { relativeError } from './relative-error.ts'

export interface Value {
  level: LevelName
  y: number
  taster?: string
  minutes?: number
}

/** A score table of one response, one session, from values with their level and taster. */
export function table(
  values: readonly Value[],
  control?: LevelName,
  expected?: 'rises',
): ScoreTable {
  const names = [...new Set(values.map(({ level }) => level))].toSorted((a, b) =>
    typeof a === 'number' && typeof b === 'number' ? a - b : 0,
  )
  const ordered = names.every((name) => typeof name === 'number')
  const rows = values.map(
    ({ level, y, taster = null, minutes = null }, at): ScoreRow => ({
      session: '1',
      flight: '1',
      batch: `${level}`,
      piece: `${at}`,
      level: names.indexOf(level),
      taster,
      position: null,
      minutes,
      handled: null,
      values: [y],
    }),
  )
  return {
    factor: { kind: 'own', name: 'x', unitOfMeasure: '', ordered, splitsAt: null },
    unit: 'batch',
    levels: names.map((name) => ({
      id: `${name}`,
      name,
      value: typeof name === 'number' ? name : null,
      label: `${name}`,
      control: name === control,
    })),
    responses: [
      {
        ...{ id: 'y', name: 'y', scale: 'measured' },
        ...{ better: { is: 'higher' }, margin: null, failures: 0 },
      },
    ],
    rows,
    expectation: expected ? { direction: expected, bestGuess: null } : null,
    tellApart: [],
    ease: null,
  }
}

export function found(scores: ScoreTable) {
  const [response] = findings(scores, { seed: 1, resamples: null }).responses
  if (!response) throw new Error('no response')
  return response
}

export function present<Answer>(answer: Answer) {
  if (!isPresent(answer)) throw new Error(JSON.stringify(answer))
  return answer
}

/** Each value within a relative error of its reference. */
export function near(pairs: readonly (readonly [number, number])[], within = 1e-9) {
  for (const [value, wanted] of pairs) expect(relativeError(value, wanted)).toBeLessThan(within)
}
