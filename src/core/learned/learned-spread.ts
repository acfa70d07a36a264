import { commonSpread, type Spread } from '@/core/design/spread.ts'
import type { Answer } from '@/core/statistics/reason.ts'
import {
  type VarianceComponent,
  varianceComponents,
} from '@/core/statistics/variance-components/variance-components.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { scatterOfTrial, type TrialScatter } from './scatter-of-trial.ts'

/** A standard deviation on the nine-point scale and its degrees of freedom. */
export interface LearnedPart {
  sd: number
  df: number
}

/** Tasters that trials have in common, and how their scores scatter; a part that their trials cannot tell is null. */
export type Panel = {
  tasterIds: string[]
  trialIds: string[]
  scores: number
} & (
  | { ok: true; parts: Record<keyof Spread, LearnedPart | null> }
  | { ok: false; reason: 'needs-two-trials' | 'needs-two-flights' }
)

/** Fewest finished trials that replace what is common practice. */
const fewestTrials = 2

/**
 * How each panel scatters: standard deviations from its finished, open trials together, by the method of moments with
 * negative variances taken as 0. Trials that share a taster, directly or through others, make one panel. Refuses before the
 * second trial, and where no trial had a second flight, which leaves nothing to compare an answer with.
 */
export function learnedPanels(trials: readonly WholeTrial[]): Panel[] {
  const scatters = trials.map(scatterOfTrial).filter((one) => one.ok)
  return panelsOf(scatters).map((members): Panel => {
    const said = {
      tasterIds: [...new Set(members.flatMap(({ tasterIds }) => tasterIds))],
      trialIds: members.map(({ trialId }) => trialId),
      scores: members.reduce((sum, { scores }) => sum + scores, 0),
    }
    if (members.length < fewestTrials) return { ...said, ok: false, reason: 'needs-two-trials' }
    const found = varianceComponents(members.map(({ sums }) => sums))
    if (!found.residual.ok) return { ...said, ok: false, reason: 'needs-two-flights' }
    const { residual, tasterLevel, piece, batch } = found
    const parts = {
      residual: part(residual),
      tasterLevel: part(tasterLevel),
      piece: part(piece),
      batch: part(batch),
    }
    return { ...said, ok: true, parts }
  })
}

/** What a plan's power may rest on: learned parts of its panel, common practice for the others. */
export interface SpreadForPlan {
  spread: Spread
  learned: (keyof Spread)[]
  trialIds: string[]
}

/** The spread to plan with: of the panel that most of the plan's tasters belong to. Null when nothing was learned of them. */
export function spreadForPlan(
  panels: readonly Panel[],
  { tasters }: Pick<Plan, 'tasters'>,
): SpreadForPlan | null {
  const shared = (panel: Panel) =>
    tasters.filter(({ tasterId }) => panel.tasterIds.includes(tasterId)).length
  const [best] = panels
    .filter((panel) => panel.ok && shared(panel) > 0)
    .toSorted((one, other) => shared(other) - shared(one))
  if (!best?.ok) return null
  const keys = Object.keys(commonSpread) as (keyof Spread)[]
  const learned = keys.filter((key) => best.parts[key] !== null)
  const spread = { ...commonSpread }
  for (const key of learned) spread[key] = best.parts[key]?.sd ?? commonSpread[key]
  return { spread, learned, trialIds: best.trialIds }
}

function part(component: Answer<VarianceComponent>): LearnedPart | null {
  return component.ok ? { sd: Math.sqrt(component.variance), df: component.df } : null
}

function panelsOf(scatters: readonly TrialScatter[]): TrialScatter[][] {
  let panels: TrialScatter[][] = []
  for (const one of scatters) {
    const known = panels.filter((panel) =>
      panel.some(({ tasterIds }) => tasterIds.some((id) => one.tasterIds.includes(id))),
    )
    panels = [...panels.filter((panel) => !known.includes(panel)), [...known.flat(), one]]
  }
  return panels
}
