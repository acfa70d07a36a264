import { expect, test } from 'vitest'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { fairnessPerLevel } from '@/core/wording/fairness/fairness-per-level.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { methodLine } from '@/core/wording/house/house-text.ts'
import { methodSumText } from '@/core/wording/plan/method-line.ts'
import { durationText, minutesBetween, minutesText } from '@/core/wording/words/duration-text.ts'
import { sampleTrial } from '../../../cli/sample-file.ts'

// By hand: 2282 min = 38 h 2 min; 126 min = 2 h 6 min; 2880 min = 2 days.
test.each([
  [4.25, 1, '4.3 min'],
  [119, 0, '119 min'],
  [126, 0, '2 h 6 min'],
  [2282, 0, '38 h 2 min'],
  [2880, 0, '2 days'],
  [-130, 0, '−2 h 10 min'],
])('%d minutes are said as %s', (minutes, decimals, text) => {
  expect(minutesText(minutes, decimals)).toBe(text)
})

test('a range says its unit once where both ends have it, and one end where both are written alike', () => {
  expect(minutesBetween({ low: 4.2, high: 5.1 }, 1)).toBe('4.2 to 5.1 min')
  expect(minutesBetween({ low: 90, high: 2280 }, 0)).toBe('90 min to 38 h')
  expect(minutesBetween({ low: 120, high: 2280 }, 0)).toBe('2 h to 38 h')
  expect(minutesBetween({ low: 40, high: 40.2 }, 0)).toBe('40 min')
})

/** Minutes that nobody would think in. */
const tooMany = (text: string) =>
  [...text.matchAll(/(\d+)(?:[.,]\d+)? min\b/g)].filter(([, minutes]) => Number(minutes) >= 120)

test('no length of time is said in more than 119 minutes, however long it is', () => {
  for (let seconds = 0; seconds < 40 * 86_400; seconds += 1_237) {
    const said = [durationText(seconds), minutesText(seconds / 60, 1)]
    said.push(minutesBetween({ low: seconds / 120, high: seconds / 60 }, 0))
    expect(said.flatMap(tooMany)).toEqual([])
  }
})

test('nor in what the fairness check and the method say of a dough that stands for two nights', () => {
  for (const name of ['focaccia-hydration', 'flatbread-hydration'] as const) {
    const whole = sampleTrial(name)
    const plans = whole.plans.map((plan) => ({
      ...plan,
      steps: plan.steps.map((step) =>
        step.waitSeconds > 0 ? { ...step, waitSeconds: step.waitSeconds + 38 * 3600 } : step,
      ),
    }))
    const long = { ...whole, plans }
    const plan = planInForce(long)
    const said = fairnessOfTrial(long).flatMap((item) => [
      fairnessText(item, plan).sentence,
      ...(fairnessPerLevel(item, plan)?.rows.map(({ text }) => text) ?? []),
    ])
    said.push(
      methodSumText(plan.steps),
      ...plan.steps.map((step) => methodLine(step, plainDegrees)),
    )
    expect(said.length).toBeGreaterThan(20)
    expect(said.filter((text) => tooMany(text).length > 0)).toEqual([])
  }
})
