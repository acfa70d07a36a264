import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

const names = ['steel', 'stone', 'tray', 'pan', 'grate']

/** The trial with its levels taken as the options of a choice: the same scores, but no distances between them. */
export function asChoice(whole: WholeTrial): WholeTrial {
  return {
    ...whole,
    plans: whole.plans.map((plan) => ({
      ...plan,
      factor: { ...plan.factor, acts: { on: 'choice' }, name: 'Baked on', unitOfMeasure: '' },
      levels: plan.levels.map((level, index) => ({
        ...level,
        value: null,
        label: names[index] ?? `way ${index + 1}`,
      })),
    })),
  }
}
