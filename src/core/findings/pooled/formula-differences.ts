import type { Formula, Ingredient } from '@/core/formula/formula-record.ts'
import { formulaAtLevel } from '@/core/trial/formula-at-level.ts'
import type { Level } from '@/core/trial/level.ts'
import type { Plan } from '@/core/trial/plan-record.ts'

/** What two plans do not share, so that their answers cannot be one. Percents are of all flour. */
export type PlanDifference =
  | { what: 'factor'; here: string; there: string }
  | { what: 'unit'; here: string; there: string }
  | { what: 'main-response'; here: string; there: string }
  | { what: 'scale'; here: string; there: string }
  | { what: 'ingredient'; name: string; here: number; there: number }
  | { what: 'yeast-form'; here: string; there: string }
  | { what: 'preferment'; name: string; here: number; there: number }
  | { what: 'cannot-be-compared' }

/** Points of flour within which two formulas are the same: what rounding and scales leave (common practice, no source). */
const samePoints = 0.25

/**
 * What keeps two trials of one factor from being pooled: another factor, another main response, or a formula that differs in
 * anything but the factor. Both formulas are taken at one and the same level. Flours of other names and lots are no difference
 * here: they are named beside the answer.
 */
export function planDifferences(here: Plan, there: Plan): PlanDifference[] {
  if (here.factor.acts.on !== there.factor.acts.on)
    return [{ what: 'factor', here: here.factor.name, there: there.factor.name }]
  const unit = (plan: Plan) => plan.factor.unitOfMeasure.trim()
  if (unit(here) !== unit(there)) return [{ what: 'unit', here: unit(here), there: unit(there) }]
  return [...responseDifferences(here, there), ...formulaDifferences(here, there)]
}

function responseDifferences(here: Plan, there: Plan): PlanDifference[] {
  const main = (plan: Plan) => plan.responses.find(({ id }) => id === plan.mainResponseId)
  const [one, other] = [main(here), main(there)]
  const name = (response: typeof one) => response?.name.trim() ?? 'none'
  if (name(one).toLowerCase() !== name(other).toLowerCase())
    return [{ what: 'main-response', here: name(one), there: name(other) }]
  const kind = (response: typeof one) =>
    response ? `${response.scale.kind}, ${response.better.is} is better` : 'none'
  return kind(one) === kind(other) ? [] : [{ what: 'scale', here: kind(one), there: kind(other) }]
}

function formulaDifferences(here: Plan, there: Plan): PlanDifference[] {
  const [level] = here.levels
  const [one, other] = [formulaOf(here, level), formulaOf(there, level)]
  if (!one || !other) return [{ what: 'cannot-be-compared' }]
  const [ours, theirs] = [amounts(one), amounts(other)]
  const names = [...new Set([...ours.keys(), ...theirs.keys()])]
  const percents = names.flatMap((name): PlanDifference[] => {
    const [a, b] = [ours.get(name) ?? 0, theirs.get(name) ?? 0]
    return Math.abs(a - b) <= samePoints ? [] : [{ what: 'ingredient', name, here: a, there: b }]
  })
  return [...percents, ...yeastDifference(one, other), ...prefermentDifferences(one, other)]
}

/** A plan's formula at a level of another plan: its value, or its option by name. */
function formulaOf(plan: Plan, level: Level | undefined): Formula | null {
  if (!level || plan.factor.acts.on === 'choice') return plan.formula
  const found = formulaAtLevel(plan, { ...level, id: plan.levels[0]?.id ?? level.id })
  return found.ok ? found.formula : null
}

/** Percent by what counts: all flour, water, salt and yeast each in one, everything else by its name. */
function amounts({ ingredients }: Formula): Map<string, number> {
  const sums = new Map<string, number>()
  for (const one of ingredients) {
    const key = keyOf(one)
    sums.set(key, (sums.get(key) ?? 0) + one.percent)
  }
  return sums
}

const keyOf = ({ kind, name }: Ingredient) =>
  kind === 'flour' || kind === 'water' || kind === 'salt' || kind === 'yeast'
    ? kind
    : name.trim().toLowerCase()

function yeastDifference(one: Formula, other: Formula): PlanDifference[] {
  const form = ({ ingredients }: Formula) =>
    ingredients.find(({ kind }) => kind === 'yeast')?.yeastForm ?? 'none'
  return form(one) === form(other)
    ? []
    : [{ what: 'yeast-form', here: form(one), there: form(other) }]
}

function prefermentDifferences(one: Formula, other: Formula): PlanDifference[] {
  const shares = ({ preferments }: Formula) =>
    new Map(preferments.map(({ kind, flourSharePercent }) => [kind, flourSharePercent]))
  const [ours, theirs] = [shares(one), shares(other)]
  return [...new Set([...ours.keys(), ...theirs.keys()])].flatMap((name): PlanDifference[] => {
    const [a, b] = [ours.get(name) ?? 0, theirs.get(name) ?? 0]
    return Math.abs(a - b) <= samePoints ? [] : [{ what: 'preferment', name, here: a, there: b }]
  })
}
