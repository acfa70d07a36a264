import { expect, test } from 'vitest'
import { trialCover } from '@/core/seal/trial-cover.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { wholeTrialOf } from '../../whole-trial-of.ts'

const coverOf = (whole: WholeTrial, place: string) =>
  trialCover(planInForce(whole), whole, place, false)

/** The made-up trial with its tasting sealed: a serving was put out, nothing unsealed. */
function sealedTrial(question: string): WholeTrial {
  const whole = wholeTrialOf()
  const last = whole.sessions.at(-1)
  return {
    ...whole,
    plans: whole.plans.map((plan) => ({ ...plan, question })),
    sessions: last ? [last] : [],
    events: whole.events.filter((event) => event.kind !== 'unsealed'),
    ballots: whole.ballots.filter((ballot) => ballot.sessionId === last?.id),
  }
}

test('while a tasting is sealed the head of every place shows codes in rising order and no level', () => {
  const whole = sealedTrial('Does more water open the crumb?')
  const codes = whole.sessions.flatMap((session) => session.dealt.servings.map((each) => each.code))
  for (const place of ['plan', 'bench', 'tasting', 'findings', 'report']) {
    const cover = coverOf(whole, place)
    expect(cover.covered).toBe(true)
    expect(cover.codes.map((each) => each.code)).toEqual(
      codes.toSorted((a, b) => Number(a) - Number(b)),
    )
    expect(cover.title).toBe('Does more water open the crumb?')
  }
})

test('a question that holds a number or an option is covered with the rail', () => {
  expect(coverOf(sealedTrial('Is 66.4 better than 73.2?'), 'tasting').title).not.toMatch(/\d/)
})

test('a question that holds a number or an option is kept out of the tab and its history, also while nothing is sealed', () => {
  const whole = { ...sealedTrial('Is 66.4 better than 73.2?'), events: [], ballots: [] }
  const cover = coverOf(whole, 'plan')
  expect(cover).toMatchObject({ covered: false, title: 'Is 66.4 better than 73.2?' })
  expect(cover.tabTitle).not.toMatch(/\d/)
})

test('before the first ballot the rail is covered where people taste, and open at the bench', () => {
  const whole = sealedTrial('Does more water open the crumb?')
  const served = new Set(['served', 'tasting-closed'])
  const before = {
    ...whole,
    events: whole.events.filter((event) => !served.has(event.kind)),
    ballots: [],
  }
  expect(coverOf(before, 'tasting').covered).toBe(true)
  expect(coverOf(before, 'bench').covered).toBe(false)
})
