import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fairnessOfPlan } from '@/core/fairness/fairness-of-plan.ts'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { adviceCodes } from '@/core/fairness/remedy.ts'
import { thresholds } from '@/core/fairness/thresholds.ts'
import { fairnessPerLevel } from '@/core/wording/fairness/fairness-per-level.ts'
import { fairnessText, severityText } from '@/core/wording/fairness/fairness-text.ts'
import { fairnessTitles } from '@/core/wording/fairness/fairness-titles.ts'
import { fairnessWhy } from '@/core/wording/fairness/fairness-why.ts'
import { remedyText } from '@/core/wording/fairness/remedy-text.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { madePlan } from '../../made-plan.ts'

const byText = (one: string, other: string) => one.localeCompare(other)

const samples = ['flatbread-hydration', 'focaccia-hydration', 'pan-loaf-salt'].map((name) => {
  const read = readTrialFile(readFileSync(`trials/${name}.json`, 'utf8'))
  if (!read.ok) throw new Error(`${name} is no trial`)
  return read.whole
})
const warm = { wantedDoughCelsius: 25, flourCelsius: 22, roomCelsius: 22, matched: false }
const plans = [
  madePlan({ temperature: warm, plannedSessions: 1, tastersTalk: true, servingRule: '' }),
  madePlan({ levels: madePlan().levels.map((level) => ({ ...level, value: null })) }),
]
const said = [
  ...samples.flatMap((whole) => {
    const plan = whole.plans.find(({ id }) => id === whole.trial.planId)
    return plan ? fairnessOfTrial(whole).map((item) => ({ item, plan })) : []
  }),
  ...plans.flatMap((plan) =>
    fairnessOfPlan(plan, { kitchen: [], trialSeed: 3, sessions: [] }).map((item) => ({
      item,
      plan,
    })),
  ),
]

describe('the words of the fairness check', () => {
  it('name every code and say why it matters', () => {
    const codes = Object.keys(thresholds).toSorted(byText)
    expect(Object.keys(fairnessTitles).toSorted(byText)).toEqual(codes)
    expect(Object.keys(fairnessWhy).toSorted(byText)).toEqual(codes)
    for (const why of Object.values(fairnessWhy)) expect(why).toMatch(/^[A-Z].*\.$/)
  })

  it('are whole sentences without a hole', () => {
    expect(said.length).toBeGreaterThan(50)
    for (const { item, plan } of said) {
      const { sentence } = fairnessText(item, plan)
      expect(sentence).toMatch(/^\S.*[.]$/)
      expect(sentence).not.toMatch(/NaN|undefined|null|Infinity|\[object/)
    }
  })

  it('carry the amount with its unit', () => {
    const [plan] = plans
    const item = said.find(
      ({ item: one, plan: of }) => of === plan && one.code === 'salt-in-water',
    )?.item
    // 2 % salt on 57 to 72 % water: 2.78 to 3.51 %, 23 % apart.
    expect(plan && item && fairnessText(item, plan).sentence).toBe(
      'Salt makes 2.78 to 3.51 % of the water, 23 % apart.',
    )
  })

  it('give the levels in the plan’s order', () => {
    for (const { item, plan } of said) {
      const rows = fairnessPerLevel(item, plan)?.rows ?? []
      const places = rows.map(({ levelId }) => plan.levels.findIndex(({ id }) => id === levelId))
      expect(places).toEqual(places.toSorted((a, b) => a - b))
    }
  })

  it('say each remedy', () => {
    const [plan = madePlan()] = plans
    for (const code of adviceCodes) expect(remedyText({ code }, plan)).toMatch(/^[A-Z].*\.$/)
    expect(remedyText({ code: 'match-water' }, plan)).toBe('Match the water')
    expect(remedyText({ code: 'hold', held: 'dough' }, plan)).toBe('Hold the dough instead')
    expect(remedyText({ code: 'equal-folds', stepId: 'fold', repeats: 3 }, plan)).toBe(
      'fold: 3 for every level',
    )
  })

  it('ask to mend next time what the log has shown', () => {
    expect(severityText({ severity: 'fix', when: 'before' })).toBe('Fix before you start')
    expect(severityText({ severity: 'fix', when: 'after' })).toBe('Mend next time')
  })
})
