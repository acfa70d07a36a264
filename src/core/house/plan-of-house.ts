import type { Plan } from '@/core/trial/plan-record.ts'
import { formulaAtYield } from './formula-at-yield.ts'
import type { HouseRevision, Yield } from './house-record.ts'

/** The weather in the kitchen today, where it differs from what the house formula was adopted with; °C. */
export interface Today {
  roomCelsius?: number
  flourCelsius?: number
}

/**
 * A house formula as a plan of one dough at a yield, so that weigh sheet, water and clock answer for it as they do for a
 * trial. It asks nothing: no response, no taster, one level that is the dough itself. With no kitchen thing named it uses all.
 */
export function planOfHouse(
  revision: HouseRevision,
  name: string,
  made: Yield = revision.yield,
  today: Today = {},
): Plan {
  const { temperature } = revision
  return {
    id: 'house',
    trialId: 'house',
    revision: 1,
    at: revision.at,
    zone: revision.zone,
    question: name,
    expectation: null,
    factor: {
      name,
      unitOfMeasure: '',
      acts: { on: 'own' },
      splitsAt: 'oven',
      held: 'dough',
    },
    levels: [{ id: 'house', value: null, label: name, control: true }],
    formula: formulaAtYield(revision.formula, made),
    steps: revision.steps,
    responses: [],
    mainResponseId: null,
    serving: 'rested',
    flights: 1,
    sparePieces: 0,
    warmUpPiece: false,
    placesPerLoad: 1,
    plannedSessions: 1,
    tasters: [],
    tastersTalk: false,
    keyKeptBy: 'baker',
    pairsOfHands: 1,
    servingRule: '',
    doughs: 'one',
    temperature: temperature ? { ...temperature, ...today, matched: true } : null,
    sharedDoses: [],
    tellApart: null,
    kitchenIds: [],
    accepted: [],
  }
}
