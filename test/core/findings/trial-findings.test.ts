import { describe, expect, it } from 'vitest'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { sampleTrial } from './sample-trial.ts'

const names = ['flatbread-hydration', 'focaccia-hydration', 'pan-loaf-salt']

function scoresOf(whole: WholeTrial) {
  const read = scoresOfTrial(whole, { unsealed: true })
  if (!read.ok) throw new Error(read.reason)
  return read.scores
}

describe.each(names)('the sample trial %s', (name) => {
  const whole = sampleTrial(name)
  const plan = planInForce(whole)
  const scores = scoresOf(whole)

  it('has its levels in rising order and its main response first', () => {
    const values = scores.levels.map(({ value }) => value ?? Number.NaN)
    expect(values).toEqual(values.toSorted((a, b) => a - b))
    expect(scores.levels).toHaveLength(plan.levels.length)
    const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
    expect(scores.responses[0]?.name).toBe(main?.name)
    expect(scores.responses).toHaveLength(plan.responses.length)
  })

  it('holds every taster answer that has a value once', () => {
    const tasted = new Set(plan.responses.filter(({ by }) => by === 'taster').map(({ id }) => id))
    const replaced = new Set(whole.ballots.flatMap(({ replaces }) => replaces ?? []))
    const counted = new Set(
      whole.sessions.flatMap(({ dealt, pieces }) =>
        dealt.servings
          .filter(({ pieceId }) =>
            pieces.some(({ id, role }) => id === pieceId && role === 'counted'),
          )
          .map(({ id }) => id),
      ),
    )
    const answers = whole.ballots
      .filter(
        ({ id, about }) => !replaced.has(id) && about.kind === 'serving' && counted.has(about.id),
      )
      .flatMap(({ answers: given }) => given)
      .filter(({ responseId, value }) => tasted.has(responseId) && value !== null)
    const held = scores.rows
      .filter(({ taster }) => taster !== null)
      .flatMap(({ values }) => values)
      .filter((value) => value !== null)
    expect(held).toHaveLength(answers.length)
  })

  it('counts pieces for every level and hands-on time', () => {
    const pieces = whole.sessions.flatMap((session) =>
      session.pieces.filter(({ role }) => role === 'counted'),
    )
    const counted = scores.ease?.reduce((sum, level) => sum + level.pieces, 0)
    expect(counted).toBe(pieces.length)
    expect(
      scores.ease?.every(({ handsSeconds }) => handsSeconds !== null && handsSeconds > 0),
    ).toBe(true)
  })

  it('gives a document of the same rows, and draws from its own seed', () => {
    const found = trialFindings(whole, { unsealed: true, resamples: 200 })
    if (!found.ok) throw new Error(found.reason)
    expect(found.document.responses.map(({ name: each }) => each)).toEqual(
      scores.responses.map((response) => response.name),
    )
    for (const [at, response] of found.document.responses.entries()) {
      const filled = scores.rows.filter(({ values }) => values[at] !== null).length
      expect(response.n).toBe(filled)
      expect(response.levels.reduce((sum, { n }) => sum + n, 0)).toBe(filled)
      if (isPresent(response.bootstrap)) expect(response.bootstrap.seed).toBe(whole.trial.seed)
    }
    expect(found.document.unit).toBe(scores.unit)
    expect(JSON.stringify(found.document)).not.toContain('null,null')
  })

  it('concludes something', () => {
    const found = trialFindings(whole, { unsealed: true, resamples: null })
    if (!found.ok) throw new Error(found.reason)
    const next = nextSteps(found.document, { toMend: 1 })
    expect(next[0]).toBe('mend')
    expect(next.length).toBeGreaterThan(1)
  })
})

it('refuses while a session is sealed, unless the look is known', () => {
  const whole = sampleTrial('focaccia-hydration')
  const events = whole.events.filter(({ kind }) => kind !== 'unsealed')
  const closed = { ...whole, events }
  expect(scoresOfTrial(closed, { unsealed: false })).toEqual({ ok: false, reason: 'still-sealed' })
  expect(trialFindings(closed, { unsealed: false, resamples: null })).toEqual({
    ok: false,
    reason: 'still-sealed',
  })
  expect(scoresOfTrial(closed, { unsealed: true }).ok).toBe(true)
})
