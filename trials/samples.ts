import { flatbreadPlan } from './flatbread-plan.ts'
import { focacciaPlan } from './focaccia-plan.ts'
import { panLoafPlan } from './pan-loaf-plan.ts'
import type { Sample } from './sample.ts'

const invented =
  'Invented data: made by a seeded generator for a bake club that does not exist. No real doughs, people or tastings.'

const at = (day: string) => Date.parse(`${day}Z`)

/** The sample trials of the bake club on Tannery Lane. */
export const samples: readonly Sample[] = [
  {
    name: 'focaccia-hydration',
    seed: 20_260_912,
    note: `${invented} A finished trial: five hydrations, three sessions, eight tasters.`,
    initials: ['AK', 'BM', 'DR', 'EL', 'HS', 'JO', 'NT', 'VW'],
    plan: focacciaPlan,
    days: [at('2026-09-05T06:30'), at('2026-09-19T06:30'), at('2026-10-03T06:40')],
    staggerSeconds: 13 * 60,
    bench: {
      stickiness: (level) => 2.2 + 0.33 * (level - 66),
      massInGrams: () => 858,
      bakeLossPercent: (level) => 11.2 + 0.14 * (level - 66),
      doughCelsius: () => 24.1,
      dustingGrams: (level) => 0.1 * (level - 70),
    },
    roomCelsius: 22,
    taste: {
      Liking: (level) => 7.1 - 0.03 * (level - 74.4) ** 2,
      Crispness: (level) => 6.4 - 0.1 * (level - 66),
      'Openness of crumb': (level) => 3.4 + 0.24 * (level - 66),
    },
    spreads: { taster: 0.6, tasterLevel: 0.45, batch: 0.22, residual: 0.8 },
  },
  {
    name: 'pan-loaf-salt',
    seed: 20_261_019,
    note: `${invented} One session alone: the factor is not answerable, and nothing is settled.`,
    initials: ['AK', 'CF', 'GP', 'HS', 'LU', 'RZ'],
    plan: panLoafPlan,
    days: [at('2026-10-17T07:00')],
    staggerSeconds: 12 * 60,
    bench: {
      massInGrams: () => 812,
      bakeLossPercent: (level) => 10.6 + 0.1 * (level - 1.4),
      doughCelsius: () => 26,
      dustingGrams: () => 0,
    },
    roomCelsius: 21,
    taste: {
      Liking: (level) => 6.1 - 0.9 * (level - 2) ** 2,
      Saltiness: (level) => 3 + 1.1 * (level - 2),
    },
    spreads: { taster: 0.8, tasterLevel: 0.6, batch: 0.3, residual: 1.2 },
  },
  {
    name: 'flatbread-hydration',
    seed: 20_261_123,
    note: `${invented} A working day half done: doughs mixed, folds under way.`,
    initials: ['BM', 'DR', 'EL', 'JO', 'VW'],
    plan: flatbreadPlan,
    days: [at('2026-11-21T08:00')],
    staggerSeconds: 10 * 60,
    untilAt: at('2026-11-21T08:52'),
    bench: {
      stickiness: (level) => 2 + 0.3 * (level - 57),
      massInGrams: () => 139,
      bakeLossPercent: (level) => 13 + 0.15 * (level - 57),
      doughCelsius: () => 25,
      dustingGrams: (level) => 1 + 0.2 * (level - 57),
    },
    roomCelsius: 23,
    taste: {},
    spreads: { taster: 0.6, tasterLevel: 0.5, batch: 0.3, residual: 1 },
  },
]
