import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { commonSpread } from '@/core/design/spread.ts'
import { learnedPanels, spreadForPlan } from '@/core/learned/learned-spread.ts'
import { scatterOfTrial } from '@/core/learned/scatter-of-trial.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

function sample(name: string): WholeTrial {
  const read = readTrialFile(
    readFileSync(new URL(`../../../trials/${name}.json`, import.meta.url), 'utf8'),
  )
  if (!read.ok) throw new Error(`${name} does not read`)
  return read.whole
}

/** The same trial as if other people had tasted it. */
function byOthers(whole: WholeTrial): WholeTrial {
  return JSON.parse(JSON.stringify(whole).replaceAll('club-taster-', 'guest-')) as WholeTrial
}

const focaccia = sample('focaccia-hydration')
const loaf = sample('pan-loaf-salt')
const again = { ...focaccia, trial: { ...focaccia.trial, id: 'again' } }

describe('a panel', () => {
  test('one trial is not enough to replace what is common practice', () => {
    expect(learnedPanels([focaccia])).toMatchObject([{ ok: false, reason: 'needs-two-trials' }])
    expect(spreadForPlan(learnedPanels([focaccia]), planInForce(focaccia))).toBeNull()
  })

  // Made with residual 0.8 and taster by level 0.45, on whole points, which adds a variance of 1/12: √(0.64 + 1/12) = 0.85.
  // Three sessions of eight tasters and five levels leave 8 · 3 · 5 scores; bounds by the 99.9 % chi-square of some 50 df.
  test('gives back the spreads that its scores were made with', () => {
    const [panel] = learnedPanels([focaccia, again])
    if (!panel?.ok) throw new Error('two finished trials make a panel')
    expect(panel.tasterIds).toHaveLength(8)
    expect(panel.parts.residual?.sd).toBeGreaterThan(0.85 * 0.65)
    expect(panel.parts.residual?.sd).toBeLessThan(0.85 * 1.35)
    expect(panel.parts.tasterLevel?.sd).toBeLessThan(0.45 * 2)
  })

  test('what stands twice has the same spread as once', () => {
    const [panel] = learnedPanels([focaccia, again])
    const [thrice] = learnedPanels([
      focaccia,
      again,
      { ...again, trial: { ...again.trial, id: 'x' } },
    ])
    if (!panel?.ok || !thrice?.ok) throw new Error('finished trials make a panel')
    expect(thrice.parts.residual?.sd).toBeCloseTo(panel.parts.residual?.sd ?? Number.NaN, 10)
    expect(thrice.scores).toBe(panel.scores * 1.5)
  })

  test('is the people who tasted: others make a panel of their own', () => {
    const panels = learnedPanels([focaccia, byOthers(again), loaf])
    expect(panels.map(({ trialIds }) => trialIds.length).toSorted((a, b) => a - b)).toEqual([1, 2])
    const strangers = { tasters: [{ tasterId: 'nobody-yet', knows: false }] }
    expect(spreadForPlan(panels, strangers)).toBeNull()
    const known = spreadForPlan(panels, planInForce(focaccia))
    expect(known?.trialIds).toEqual([focaccia.trial.id, loaf.trial.id])
    expect(known?.learned).toContain('residual')
  })

  test('keeps to common practice in what its trials cannot tell', () => {
    const panels = learnedPanels([focaccia, again])
    const [panel] = panels
    const known = spreadForPlan(panels, planInForce(focaccia))
    if (!panel?.ok || !known) throw new Error('two finished trials make a panel')
    for (const key of Object.keys(commonSpread) as (keyof typeof commonSpread)[]) {
      expect(known.learned.includes(key)).toBe(panel.parts[key] !== null)
      expect(known.spread[key]).toBe(panel.parts[key]?.sd ?? commonSpread[key])
    }
  })
})

describe('a trial teaches nothing', () => {
  test('before its planned sessions are done', () => {
    const waiting = {
      ...focaccia,
      sessions: focaccia.sessions.slice(0, 2),
      events: focaccia.events.filter(({ sessionId }) => sessionId !== focaccia.sessions[2]?.id),
      ballots: focaccia.ballots.filter(({ sessionId }) => sessionId !== focaccia.sessions[2]?.id),
    }
    expect(scatterOfTrial(waiting)).toEqual({ ok: false, reason: 'not-finished' })
  })

  test('while a session keeps its codes', () => {
    const covered = {
      ...focaccia,
      events: focaccia.events.filter(({ kind }) => kind !== 'unsealed'),
    }
    expect(scatterOfTrial(covered)).toEqual({ ok: false, reason: 'still-sealed' })
  })

  test('without a score on nine points', () => {
    const plans = focaccia.plans.map((plan) => ({
      ...plan,
      responses: plan.responses.filter(({ by }) => by === 'baker'),
    }))
    expect(scatterOfTrial({ ...focaccia, plans })).toEqual({ ok: false, reason: 'no-scores' })
  })
})
