import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { coveredTrials, withoutCovered } from '@/core/lesson/covered-trials.ts'
import {
  coveredBy,
  type LessonSaid,
  lessonParts,
  lessonPlates,
  lessonScale,
  openParts,
  tastedInOrder,
} from '@/core/lesson/lesson.ts'
import { saidOfDraft } from '@/core/lesson/said-of-draft.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import {
  guessText,
  lessonTitles,
  lookFor,
  ownPlateText,
} from '@/core/wording/lesson/lesson-text.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

function planOf(name: string) {
  const read = readTrialFile(readFileSync(`trials/${name}.json`, 'utf8'))
  if (!read.ok) throw new Error('the sample can be read')
  return planInForce(read.whole)
}
const plan = planOf('focaccia-hydration')
const ids = plan.levels.map(({ id }) => id)
const plates = lessonPlates(plan, 7)
const nothing: LessonSaid = { guess: null, scores: new Map(), nothingToTaste: false }
const scored = new Map(plates.map(({ letter }, at) => [letter, at + 1]))

test('each level lies under one letter, the same again from the same seed, and not always in the plan’s order', () => {
  expect(plates.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D', 'E'])
  expect(new Set(plates.map(({ levelId }) => levelId))).toEqual(new Set(ids))
  expect(lessonPlates(plan, 7)).toEqual(plates)
  const orders = new Set(
    Array.from({ length: 40 }, (_, seed) =>
      lessonPlates(plan, seed)
        .map(({ levelId }) => levelId)
        .join(),
    ),
  )
  expect(orders.size).toBeGreaterThan(20)
})

describe('the answer', () => {
  const guess = { levelId: ids[2] ?? '' }
  const four = new Map([...scored].slice(0, 4))
  test.each<[string, LessonSaid, ReturnType<typeof coveredBy>]>([
    ['nothing was said', nothing, 'guess'],
    ['all was tasted, nothing guessed', { ...nothing, scores: scored }, 'guess'],
    ['a guess alone', { ...nothing, guess }, 'tasting'],
    ['one plate is left', { guess, scores: four, nothingToTaste: false }, 'tasting'],
    ['guessed and tasted', { guess, scores: scored, nothingToTaste: false }, null],
    ['guessed, and there is nothing to taste', { ...nothing, guess, nothingToTaste: true }, null],
    ['no difference guessed, and tasted', { ...nothing, guess: 'alike', scores: scored }, null],
    ['nothing to taste, nothing guessed', { ...nothing, nothingToTaste: true }, 'guess'],
  ])('%s', (_, said, by) => {
    expect(coveredBy(said, plates)).toBe(by)
    const open = openParts(said, plates)
    expect(open.includes('answer')).toBe(by === null)
    expect(open.includes('riders') || open.includes('reach')).toBe(by === null)
    expect(open).toEqual(lessonParts.slice(0, open.length))
  })
})

test('what is kept of a lesson is read, and what is no level, letter or score is let go', () => {
  const kept = { seed: '7', guess: ids[1] ?? '', 'score/A': '6', 'score/B': '12', 'score/a': '3' }
  expect(saidOfDraft(kept, ids)).toEqual({
    ...{ guess: { levelId: ids[1] }, scores: new Map([['A', 6]]), nothingToTaste: false },
  })
  expect(saidOfDraft({ guess: 'gone', nothing: 'yes' }, ids)).toEqual({
    ...nothing,
    nothingToTaste: true,
  })
})

test('the learner’s own plate is said from the best down, those alike together, and what it cannot do', () => {
  const scores = new Map([...plates].map(({ letter }) => [letter, letter === 'C' ? 8 : 5] as const))
  const order = tastedInOrder({ scores }, plates)
  expect(order.map(({ letter }) => letter)).toEqual(['C', 'A', 'B', 'D', 'E'])
  const said = ownPlateText(order, plan)
  expect(said).toMatch(/^On your plate, from the best down: C, which was \d\d %: 8; A, which was/)
  expect(said).toContain('it cannot settle anything')
  expect(ownPlateText([], plan)).toContain('read, not tasted')
  expect(guessText({ levelId: ids[0] ?? '' }, plan)).toBe(
    'You guessed that 66 % would come out best.',
  )
})

test.each(['focaccia-hydration', 'pan-loaf-salt', 'flatbread-hydration'])(
  '%s: every part has a title and something to look for, and tasters’ points to score by',
  (name) => {
    const own = planOf(name)
    for (const part of lessonParts) {
      expect(lessonTitles[part]).not.toBe('')
      const looks = lookFor(part, own)
      expect(looks.length).toBeGreaterThan(0)
      expect(new Set(looks).size).toBe(looks.length)
    }
    expect(lessonScale(own).scale.kind).toBe('nine-point')
  },
)

test('a lesson covers its own trial alone: that line is shown without its answer, every other as it is', () => {
  const line = { trialId: 'b', question: 'How wet?', answer: 'Best at 74 %.' }
  expect(coveredTrials(['a', 'b', 'b'], ['b', 'c'])).toEqual(['b'])
  expect(coveredTrials(['a'], [])).toEqual([])
  expect(withoutCovered(line, ['b'])).toEqual({ trialId: 'b', question: 'How wet?' })
  expect(withoutCovered(line, ['a'])).toBe(line)
})
