import { isPresent } from '@/core/findings/reason.ts'
import type { LevelName, ScoreTable } from '@/core/findings/table/score-table.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { Response } from '@/core/trial/response.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { type PlanDifference, planDifferences } from './formula-differences.ts'
import { type PooledModel, pooledModel } from './pooled-model.ts'
import { type UnitRows, unitRowsOf } from './unit-rows.ts'

/** One of the trials that are looked at together. */
export interface PooledTrial {
  trialId: string
  question: string
  sessions: number
  tasters: number
  /** Flours as the plan names them, with their bag and lot where they are known. */
  flours: string[]
  oven: string | null
  mixer: string | null
}

export interface Pooled {
  factorName: string
  unitOfMeasure: string
  responseName: string
  levels: { name: LevelName; value: number | null; trials: number }[]
  trials: PooledTrial[]
  /** What is compared: the mean of a dough, or of a level in a session, by its trial and its level in the lists above. */
  points: { trial: number; session: number; level: number; value: number }[]
  /** How the main response is scored and the margin that was planned; null where no main response is named. */
  response: Pick<Response, 'scale' | 'margin'> | null
  model: PooledModel
}

export type PooledAnswer =
  | { ok: true; pooled: Pooled }
  | { ok: false; reason: 'one-trial' | 'same-trial-twice' }
  | { ok: false; reason: 'sealed' | 'no-scores'; at: number }
  | { ok: false; reason: 'differs'; at: number; differences: PlanDifference[] }

/**
 * Several trials of one factor as one answer: each session of each trial a block of its own. Trials whose plans differ in
 * anything but the factor are refused with the difference (against the first); `at` counts from 0. Of no trial anything is told,
 * differences of its formula neither, while one of them is sealed; `unsealed` is said by the one who asks and knows of the look.
 */
export function pooledTrials(
  trials: readonly WholeTrial[],
  { unsealed }: { unsealed: boolean },
): PooledAnswer {
  const [first] = trials
  if (!first || trials.length < 2) return { ok: false, reason: 'one-trial' }
  if (new Set(trials.map(({ trial }) => trial.id)).size < trials.length)
    return { ok: false, reason: 'same-trial-twice' }
  const plan = planInForce(first)
  const tables: ScoreTable[] = []
  for (const [at, whole] of trials.entries()) {
    const scores = scoresOfTrial(whole, { unsealed })
    if (!scores.ok) return { ok: false, reason: 'sealed', at }
    tables.push(scores.scores)
  }
  const read: {
    whole: WholeTrial
    names: LevelName[]
    values: (number | null)[]
    rows: UnitRows
  }[] = []
  for (const [at, scores] of tables.entries()) {
    const whole = trials[at] ?? first
    const differences = at === 0 ? [] : planDifferences(plan, planInForce(whole))
    if (differences.length > 0) return { ok: false, reason: 'differs', at, differences }
    const rows = unitRowsOf(scores)
    if (!isPresent(rows) || rows.y.length === 0) return { ok: false, reason: 'no-scores', at }
    const { levels } = scores
    read.push({
      ...{ whole, rows, names: levels.map(({ name }) => name) },
      values: levels.map(({ value }) => value),
    })
  }
  const levels = commonLevels(read)
  const place = (name: LevelName) => levels.findIndex((level) => level.name === name)
  const rows = {
    y: read.flatMap((one) => one.rows.y),
    trial: read.flatMap((one, trial) => one.rows.y.map(() => trial)),
    session: read.flatMap((one) => one.rows.session),
    level: read.flatMap((one) => one.rows.level.map((level) => place(one.names[level] ?? ''))),
    trialCount: read.length,
    levelCount: levels.length,
  }
  const values = levels.map(({ value }) => value)
  const ordered = values.every((value) => value !== null)
  const response = plan.responses.find(({ id }) => id === plan.mainResponseId)
  return {
    ok: true,
    pooled: {
      factorName: plan.factor.name,
      unitOfMeasure: plan.factor.unitOfMeasure,
      responseName: response?.name ?? '',
      levels,
      trials: trials.map(toldTrial),
      points: rows.y.map((value, at) => ({
        ...{
          trial: rows.trial[at] ?? 0,
          session: rows.session[at] ?? 0,
          level: rows.level[at] ?? 0,
        },
        value,
      })),
      response: response ? { scale: response.scale, margin: response.margin } : null,
      model: pooledModel(rows, ordered ? values.map(Number) : null),
    },
  }
}

type Read = { names: LevelName[]; values: (number | null)[]; rows: UnitRows }

/** Every level that some trial has a value for, by number or by name, in rising order where all are numbers. */
function commonLevels(read: readonly Read[]): Pooled['levels'] {
  const met = new Map<LevelName, Pooled['levels'][number]>()
  for (const { names, values, rows } of read) {
    for (const level of new Set(rows.level)) {
      const name = names[level] ?? ''
      const known = met.get(name)
      if (known) known.trials += 1
      else met.set(name, { name, value: values[level] ?? null, trials: 1 })
    }
  }
  const list = [...met.values()]
  return list.every(({ value }) => value !== null)
    ? list.sort((one, other) => Number(one.value) - Number(other.value))
    : list
}

function toldTrial(whole: WholeTrial): PooledTrial {
  const plan = planInForce(whole)
  const named = <Kind extends KitchenThing['kind']>(kind: Kind) =>
    whole.kitchen.find(
      (thing): thing is Extract<KitchenThing, { kind: Kind }> =>
        thing.kind === kind && plan.kitchenIds.includes(thing.id),
    )
  const flours = plan.formula.ingredients
    .filter(({ kind }) => kind === 'flour')
    .map(({ name, flourLotId }) => {
      const lot = whole.kitchen.find(({ id }) => id === flourLotId)
      const bag = lot?.kind === 'flour' ? [lot.name, lot.lot].filter(Boolean).join(', lot ') : ''
      return bag === '' ? name : `${name} (${bag})`
    })
  const [oven, mixer] = [named('oven'), named('mixer')]
  return {
    trialId: whole.trial.id,
    question: plan.question,
    sessions: new Set(whole.ballots.map(({ sessionId }) => sessionId)).size,
    tasters: new Set(whole.ballots.map(({ tasterId }) => tasterId)).size,
    flours,
    oven: oven?.name ?? null,
    mixer: mixer?.name ?? null,
  }
}
