import { formulaProblems } from '@/core/formula/formula-problems.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { codeProblems } from './codes-asked.ts'
import { collidingLevels } from './colliding-levels.ts'
import { factorProblems } from './factor-problems.ts'
import { kitchenProblems, loadProblems } from './kitchen-problems.ts'
import { levelFormulaProblems } from './level-formula-problems.ts'
import { levelProblems } from './level-problems.ts'
import { levelHeatProblems, stepHeatProblems } from './oven-heat-problems.ts'
import { pieceProblems } from './piece-problems.ts'
import type { PlanProblem } from './plan-problem.ts'
import type { Plan } from './plan-record.ts'
import { responseProblems } from './response-problems.ts'
import { atTableProblems } from './served-at-table.ts'
import { stepProblems } from './step-problems.ts'
import { tasterProblems } from './taster-problems.ts'
import { writtenFirstProblems } from './written-first-problems.ts'

/**
 * Everything that is wrong with a plan, or looks wrong, each with the field it stands at, in the order of the page. With
 * the kitchen given, levels that weigh the same on its scales, an oven or a fridge asked for more than it has, and things that
 * are gone are found too. An empty list means
 * the plan can be worked; problems of severity `ask` alone do not stop it.
 */
export function planProblems(plan: Plan, kitchen?: readonly KitchenThing[]): PlanProblem[] {
  const asked = plan.question.trim() === ''
  const question: PlanProblem[] = asked
    ? [{ path: '/question', severity: 'stop', reason: 'empty-question' }]
    : []
  const formula = formulaProblems(plan.formula).map((one) => ({
    ...one,
    path: `/formula${one.path}`,
  }))
  const soundFormula = !formula.some(({ severity }) => severity === 'stop')
  return [
    ...question,
    ...expectationProblems(plan),
    ...writtenFirstProblems(plan),
    ...factorProblems(plan),
    ...levelProblems(plan),
    ...levelHeatProblems(plan, kitchen ?? []),
    ...formula,
    ...(soundFormula ? levelFormulaProblems(plan) : []),
    ...(soundFormula && kitchen ? collidingLevels(plan, kitchen) : []),
    ...pieceProblems(plan),
    ...codeProblems(plan),
    ...(kitchen ? loadProblems(plan, kitchen) : []),
    ...stepProblems(plan),
    ...stepHeatProblems(plan, kitchen ?? []),
    ...responseProblems(plan),
    ...tasterProblems(plan),
    ...atTableProblems(plan),
    ...temperatureProblems(plan),
    ...(kitchen ? kitchenProblems(plan, kitchen) : []),
  ]
}

function expectationProblems({ expectation, levels }: Plan): PlanProblem[] {
  if (!expectation) return [{ path: '/expectation', severity: 'ask', reason: 'no-expectation' }]
  const { bestGuess } = expectation
  if (bestGuess === null) return []
  const path = '/expectation/bestGuess'
  if (!Number.isFinite(bestGuess)) return [{ path, severity: 'stop', reason: 'not-a-number' }]
  const values = levels.flatMap(({ value }) => (value === null ? [] : [value]))
  if (values.length === 0) return []
  const [least, most] = [Math.min(...values), Math.max(...values)]
  if (bestGuess >= least && bestGuess <= most) return []
  return [{ path, severity: 'ask', reason: 'best-guess-outside', bestGuess, least, most }]
}

/** Doughs are wanted between 10 and 40 °C (common practice): outside, a slip of the unit is likelier. */
const usualDough = { least: 10, most: 40 }

function temperatureProblems({ temperature }: Plan): PlanProblem[] {
  if (!temperature) return []
  const fields = ['wantedDoughCelsius', 'flourCelsius', 'roomCelsius'] as const
  return fields.flatMap((field): PlanProblem[] => {
    const celsius = temperature[field]
    const path = `/temperature/${field}`
    if (!Number.isFinite(celsius)) return [{ path, severity: 'stop', reason: 'not-a-number' }]
    const { least, most } = field === 'wantedDoughCelsius' ? usualDough : { least: -30, most: 50 }
    if (celsius >= least && celsius <= most) return []
    return [{ path, severity: 'ask', reason: 'temperature-unusual', celsius, least, most }]
  })
}
