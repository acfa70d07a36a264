import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { findings } from '@/core/findings/findings.ts'
import { type CsvOptions, scoresOfCsv } from '@/core/findings/table/scores-of-csv.ts'

type Json = number | string | boolean | null | Json[] | { [key: string]: Json }
type Asked = { asked: CsvOptions; responses: Json }

function read(name: string): string {
  return readFileSync(new URL(`./reference/${name}`, import.meta.url), 'utf8')
}

/** R 4.2.2 (lm, drop1, emmeans, friedman.test; mvtnorm for Dunnett): reference/awkward-tables.R. */
const reference: Record<string, Asked> = JSON.parse(read('awkward-tables.json'))

/** Dunnett's factor and p by mvtnorm hold to 1e-4; Tukey's by integration to 1e-8; all else to 1e-9. */
function allowed(path: string): number {
  if (/againstControl.*\.(low|high|p)$/.test(path)) return 1e-4
  return /pairs.*\.(low|high|p)$/.test(path) ? 1e-8 : 1e-9
}

/**
 * Where the notebook means something else than the program in R computed: the slope over these pieces has the error of the tasters' own
 * slopes; where a taster missed a level on some days, these pieces, their ranks and each taster's means are freed from the day; levels that part
 * late are compared by session, flights being no blocks; where levels scatter unequally, each pair of these pieces has its own error. What stands there instead is checked by `rules-of-evidence.test.ts`.
 */
const otherwise: Record<string, RegExp> = {
  'missing-cells': /\.(pieces|ranks|agreement)\./,
  'harsh-taster-absent': /\.(pieces|agreement)\./,
  // Its levels scatter unequally.
  'ties-everywhere': /\.pieces\.pairs\./,
  // A taster's own slope counts alike, however many levels that taster had.
  'new-tasters-each-session': /\.pieces\.trend\./,
  pieces: /\.(pieces|factor|agreement)\./,
}
const ownSlopes = /\.pieces\.trend\.(se|low|high|p)$/

/** Every number of the reference that ours misses, as `path: ours, R`; differences and limits are measured by their standard error. */
function missed(ours: unknown, wanted: Json, path: string, size = 0): string[] {
  if (wanted === null) return []
  if (typeof wanted === 'number') {
    const floor = /againstControl.*\.p$/.test(path) ? 1 : Math.max(Math.abs(wanted), size)
    const near =
      typeof ours === 'number' && Math.abs(ours - wanted) <= allowed(path) * floor + 1e-15
    return near ? [] : [`${path}: ${JSON.stringify(ours)}, ${wanted}`]
  }
  if (typeof wanted !== 'object') return ours === wanted ? [] : [`${path}: ${ours}, ${wanted}`]
  if (typeof ours !== 'object' || ours === null) return [`${path}: nothing`]
  if (Array.isArray(wanted) && (!Array.isArray(ours) || ours.length !== wanted.length)) {
    return [`${path}: ${JSON.stringify(ours)}`]
  }
  const { se } = wanted as { se?: Json }
  return Object.entries(wanted).flatMap(([key, value]) =>
    missed(
      (ours as Record<string, unknown>)[key],
      value,
      `${path}.${key}`,
      typeof se === 'number' && key !== 'p' ? se : 0,
    ),
  )
}

/** The rows by their level: R takes options in the order of their characters, we in the order of the file. */
function inOrder(text: string): string {
  const [head, ...rows] = text.trimEnd().split('\n')
  return [head, ...rows.toSorted((a, b) => (levelOf(a) < levelOf(b) ? -1 : 1))].join('\n')
}

const levelOf = (row: string) => row.split(',')[1] ?? ''

/** Rungs that R could answer and we did not, or the other way round. */
function rungsOf(responses: readonly object[]): string[][] {
  return responses.map((response) =>
    Object.entries(response)
      .filter(([key]) => ['rows', 'pieces', 'doughs', 'factor', 'ranks'].includes(key))
      .filter(([, answer]) => answer !== null && !('reason' in answer))
      .map(([key]) => key)
      .toSorted(),
  )
}

describe('awkward tables of scores, every number against R', () => {
  it.each(Object.keys(reference))('%s', (name) => {
    const { asked, responses } = reference[name] as Asked
    const text = read(`awkward/${name}.csv`)
    const scores = scoresOfCsv(name === 'a-choice' ? inOrder(text) : text, {
      better: 'higher',
      ...asked,
    })
    if (!scores.ok) throw new Error(JSON.stringify(scores.troubles))
    const ours = findings(scores.scores, { seed: 1, resamples: null }).responses
    const miss = missed(ours, responses, name)
      .filter((each) => !ownSlopes.test(each.split(':')[0] ?? ''))
      .filter((each) => !otherwise[name]?.test(each))
    expect(miss).toEqual([])
    expect(rungsOf(ours)).toEqual(rungsOf(responses as object[]))
  })
})
