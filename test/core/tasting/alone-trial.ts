import type { AtTable } from '@/core/trial/at-table.ts'
import type { Response } from '@/core/trial/response.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { tastingTrial } from '../../journeys/tasting-trial.ts'
import { planOf } from '../../trial-of/plan-of.ts'

const levels = [66.4, 69.1, 71.7].map((value, at) => ({
  id: `level-${at + 1}`,
  value,
  label: String(value),
  control: at === 0,
}))

const smell: Response = {
  ...{ id: 'smell', name: 'Smell', by: 'taster', about: 'serving', margin: null },
  scale: { kind: 'nine-point', anchors: [] },
  better: { is: 'higher' },
}

/** One person, three doughs, two goes, three questions; plated by themselves unless said otherwise. */
export function aloneTrial(atTable: AtTable = { shuffledPlates: true }): WholeTrial {
  const { responses, factor } = planOf()
  return tastingTrial({
    levels,
    factor: { ...factor, held: 'flour' },
    sharedDoses: [],
    responses: [...responses.filter(({ by }) => by === 'taster'), smell],
    tasters: [{ tasterId: 'club-1', knows: false }],
    atTable: { again: levels.map(({ id }) => id), ...atTable },
  })
}
