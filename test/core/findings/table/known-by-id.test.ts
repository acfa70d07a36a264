import { describe, expect, test } from 'vitest'
import { axisLevels, chartOfResponse } from '@/core/figure/chart-of-response.ts'
import { findings } from '@/core/findings/findings.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { toldApart } from '@/core/findings/table/told-apart.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { lettersOf } from '@/core/report/letters-of.ts'
import { observationsCsv } from '@/core/report/observations-csv.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { sampleTrial } from '../sample-trial.ts'

/** The sample with a revision of its plan on top that no session has run yet. */
function revised(whole: WholeTrial, change: (plan: Plan) => Plan): WholeTrial {
  const plan = planInForce(whole)
  const next = { ...change(plan), id: `${plan.id}-next`, revision: plan.revision + 1 }
  return {
    ...whole,
    trial: { ...whole.trial, planId: next.id },
    plans: [...whole.plans, next],
  }
}

/** The sample as a choice between options called so, in the order of its levels. */
function asChoice(whole: WholeTrial, labels: readonly string[]): WholeTrial {
  const plans = whole.plans.map((plan) => ({
    ...plan,
    factor: { ...plan.factor, acts: { on: 'choice' as const }, unitOfMeasure: '' },
    levels: plan.levels.map((level, at) => ({ ...level, value: null, label: labels[at] ?? '' })),
    expectation: { direction: 'no-difference' as const, bestGuess: null },
  }))
  return { ...whole, plans: plans as WholeTrial['plans'] }
}

function scoresOf(whole: WholeTrial) {
  const read = scoresOfTrial(whole, { unsealed: false })
  if (!read.ok) throw new Error(read.reason)
  return read.scores
}

function findingsOf(whole: WholeTrial, weights?: { responseId: string; weight: number }[]) {
  const read = trialFindings(whole, {
    unsealed: false,
    resamples: null,
    ...(weights ? { weights } : {}),
  })
  if (!read.ok) throw new Error(read.reason)
  return read.document
}

const sample = sampleTrial('focaccia-hydration')
const plan = planInForce(sample)
const options = ['White', 'White', 'Rye', 'Spelt', 'Durum']

describe('levels', () => {
  test('two options of one wording stay two, each with its own rows, told apart by a number', () => {
    const whole = asChoice(sample, options)
    const scores = scoresOf(whole)
    expect(scores.levels.map(({ id }) => id)).toEqual(plan.levels.map(({ id }) => id))
    expect(scores.levels.map(({ name }) => name)).toEqual([
      ...['White (1)', 'White (2)', 'Rye', 'Spelt', 'Durum'],
    ])
    const rows = (of: typeof scores) =>
      of.levels.map((_, at) => of.rows.filter((row) => row.level === at).length)
    expect(rows(scores)).toEqual(rows(scoresOf(sample)))
    const [main] = findingsOf(whole).responses
    const [measured] = findingsOf(sample).responses
    expect(main?.levels).toEqual(measured?.levels)
  })

  test('an option that was named anew after its session is one level, under its new name', () => {
    const whole = asChoice(sample, ['White', 'Whole', 'Rye', 'Spelt', 'Durum'])
    const later = revised(whole, (now) => ({
      ...now,
      levels: now.levels.map((level, at) => (at === 2 ? { ...level, label: 'Light rye' } : level)),
    }))
    const scores = scoresOf(later)
    expect(scores.levels.map(({ name }) => name)).toEqual([
      ...['White', 'Whole', 'Light rye', 'Spelt', 'Durum'],
    ])
    expect(scores.rows).toEqual(scoresOf(whole).rows)
  })

  test('an option taken out and put back under its old name is the same level', () => {
    const whole = asChoice(sample, ['White', 'Whole', 'Rye', 'Spelt', 'Durum'])
    const later = revised(whole, (now) => ({
      ...now,
      levels: now.levels.map((level, at) => (at === 2 ? { ...level, id: 'put-back' } : level)),
    }))
    const scores = scoresOf(later)
    expect(scores.levels).toHaveLength(5)
    expect(scores.levels[2]?.id).toBe('put-back')
    expect(scores.rows).toEqual(scoresOf(whole).rows)
    expect([...lettersOf(later)].length).toBe([...lettersOf(whole)].length)
  })

  test('a number that was changed between two sessions is two levels, each with what was made of it', () => {
    const [first] = plan.levels
    if (!first) throw new Error('the sample has levels')
    const later = revised(sample, (now) => ({
      ...now,
      levels: now.levels.map((level) =>
        level.id === first.id ? { ...level, value: 60, label: '60' } : level,
      ),
    }))
    const scores = scoresOf(later)
    expect(scores.levels.map(({ name }) => name)).toEqual([
      60,
      ...plan.levels.map(({ value }) => value),
    ])
    expect(new Set(scores.levels.map(({ id }) => id)).size).toBe(6)
    const before = scoresOf(sample)
    expect(scores.rows.map(({ level }) => level)).toEqual(before.rows.map(({ level }) => level + 1))
  })

  test('axis, points and means of a chart meet by id, also where two are called the same', () => {
    const whole = asChoice(sample, options)
    const scores = scoresOf(whole)
    const [found] = findings(scores, { seed: 1, resamples: null }).responses
    if (!found) throw new Error('the sample has a response')
    const chart = chartOfResponse(scores, 0, found, 'factor', null)
    const ids = axisLevels(scores.levels).map(({ id }) => id)
    expect(new Set(ids).size).toBe(5)
    expect(chart.x.positions.map(({ levelId }) => levelId)).toEqual(ids)
    expect(chart.means.map(({ levelId }) => levelId)).toEqual(ids)
    expect(new Set(chart.points.map(({ levelId }) => levelId))).toEqual(new Set(ids))
    const [one, two] = chart.means
    expect(one?.at).not.toBe(two?.at)
  })
})

describe('responses', () => {
  const [first, second] = plan.responses
  if (!first || !second) throw new Error('the sample has two responses')
  const doubled: WholeTrial = {
    ...sample,
    plans: sample.plans.map((each) => ({
      ...each,
      responses: each.responses.map((response) => ({
        ...response,
        name: response.id === second.id ? first.name : response.name,
      })),
    })) as WholeTrial['plans'],
  }

  test('two of one name keep their own numbers, told apart by a number', () => {
    const before = findingsOf(sample)
    const after = findingsOf(doubled)
    expect(after.responses.map(({ id, n, levels }) => ({ id, n, levels }))).toEqual(
      before.responses.map(({ id, n, levels }) => ({ id, n, levels })),
    )
    const names = after.responses.map(({ name }) => name)
    expect(names).toContain(`${first.name} (1)`)
    expect(names).toContain(`${first.name} (2)`)
    expect(
      new Set(observationsCsv(doubled, scoresOf(doubled)).split('\r\n')[0]?.split(',')).size,
    ).toBe(8 + plan.responses.length)
  })

  test('a weight of the trade-off goes to the one that is meant, and stays with it under a new name', () => {
    const weights = [{ responseId: second.id, weight: 3 }]
    const before = findingsOf(sample, weights).tradeOff
    if (!isPresent(before)) throw new Error('the sample has a trade-off')
    expect(before.weights.find(({ responseId }) => responseId === second.id)?.weight).toBe(3)
    expect(findingsOf(doubled, weights).tradeOff).toEqual(before)
    const renamed = revised(sample, (now) => ({
      ...now,
      responses: now.responses.map((response) =>
        response.id === second.id ? { ...response, name: 'Something else' } : response,
      ),
    }))
    expect(findingsOf(renamed, weights).tradeOff).toEqual(before)
  })
})

test('names are told apart only where they are the same, and never by a name that is taken', () => {
  expect(toldApart(['Rye', 'White'])).toEqual(['Rye', 'White'])
  expect(toldApart(['White', 'White (1)', 'White'])).toEqual([
    'White (2)',
    'White (1)',
    'White (3)',
  ])
})
