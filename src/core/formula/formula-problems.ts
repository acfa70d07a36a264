import { batchGrams } from './batch-grams.ts'
import type { FormulaProblem } from './formula-problem.ts'
import type { Formula, Ingredient } from './formula-record.ts'
import { formulaViews } from './formula-views.ts'
import { hydrationPercent } from './hydration.ts'
import { prefermentProblems } from './preferment-problems.ts'
import { flourPercent } from './totals.ts'

const usualHydration = { leastPercent: 30, mostPercent: 150 }
const usualMost: Readonly<Record<Ingredient['kind'], number>> = {
  flour: 100,
  water: 200,
  liquid: 200,
  salt: 6,
  yeast: 8,
  fat: 100,
  other: 200,
}

/**
 * Everything that is wrong with a formula, or looks wrong, each with the field it stands at. Percents past sense and a
 * hydration under 30 or over 150 % are asked about and never forbidden (those bounds, and the usual most of each kind,
 * are common practice without a source).
 */
export function formulaProblems(formula: Formula): FormulaProblem[] {
  const names = formula.ingredients.map(({ name }) => name.trim().toLowerCase())
  const problems = formula.ingredients.flatMap((one, index) =>
    ingredientProblems(names, one, index),
  )
  if (problems.some(({ reason }) => reason === 'not-a-number')) return problems
  return [
    ...problems,
    ...wholeProblems(formula),
    ...prefermentProblems(formula),
    ...heldByPreferments(formula),
  ]
}

function ingredientProblems(
  names: readonly string[],
  one: Ingredient,
  index: number,
): FormulaProblem[] {
  const path = `/ingredients/${index}`
  const { id: ingredientId, percent, name } = one
  const found: FormulaProblem[] = []
  const plain = names[index] ?? ''
  if (plain === '') {
    found.push({
      path: `${path}/name`,
      severity: 'stop',
      reason: 'nameless-ingredient',
      ingredientId,
    })
  }
  if (plain !== '' && names.indexOf(plain) < index) {
    found.push({
      path: `${path}/name`,
      severity: 'ask',
      reason: 'duplicate-ingredient',
      ingredientId,
      name,
    })
  }
  const at = { path: `${path}/percent`, ingredientId }
  const usualMostPercent = usualMost[one.kind]
  if (!Number.isFinite(percent)) {
    found.push({ ...at, severity: 'stop', reason: 'not-a-number' })
  } else if (percent < 0) {
    found.push({ ...at, severity: 'stop', reason: 'negative-percent', percent })
  } else if (percent > usualMostPercent && one.kind !== 'flour') {
    found.push({ ...at, severity: 'ask', reason: 'percent-past-sense', percent, usualMostPercent })
  }
  return found
}

function wholeProblems(formula: Formula): FormulaProblem[] {
  if (formula.ingredients.length === 0) {
    return [{ path: '/ingredients', severity: 'stop', reason: 'no-ingredients' }]
  }
  const found: FormulaProblem[] = []
  const sumPercent = flourPercent(formula)
  if (!(sumPercent > 0)) {
    found.push({ path: '/ingredients', severity: 'stop', reason: 'no-flour' })
  } else if (Math.abs(sumPercent - 100) > 1e-6) {
    found.push({ path: '/ingredients', severity: 'stop', reason: 'flours-do-not-sum', sumPercent })
  }
  found.push(...sizeProblems(formula))
  const hydration = hydrationPercent(formula)
  const { leastPercent, mostPercent } = usualHydration
  if (hydration === 0 && !formula.ingredients.some(({ kind }) => kind === 'liquid')) {
    found.push({ path: '/ingredients', severity: 'ask', reason: 'no-water' })
  } else if (hydration !== null && (hydration < leastPercent || hydration > mostPercent)) {
    const reason = 'hydration-unusual'
    const path = `/ingredients/${formula.ingredients.findIndex(({ kind }) => kind === 'water')}/percent`
    if (hydration > 0) {
      found.push({ path, severity: 'ask', reason, hydrationPercent: hydration, ...usualHydration })
    }
  }
  return found
}

function sizeProblems(formula: Formula): FormulaProblem[] {
  const size = formula.batchSize
  const fields =
    size.by === 'flour'
      ? (['flourGrams'] as const)
      : (['pieces', 'pieceGrams', 'lossPercent'] as const)
  const values: Record<string, number> = { ...size, by: 0 }
  const odd = fields.find((field) => !Number.isFinite(values[field]))
  if (odd) return [{ path: `/batchSize/${odd}`, severity: 'stop', reason: 'not-a-number' }]
  const first = size.by === 'flour' ? 'flourGrams' : size.pieces > 0 ? 'pieceGrams' : 'pieces'
  const dough = size.by === 'flour' ? size.flourGrams : size.pieces * size.pieceGrams
  if (!(dough > 0)) return [{ path: `/batchSize/${first}`, severity: 'stop', reason: 'no-dough' }]
  return []
}

/** Ingredients of which the preferments hold more than the whole dough: the final dough would have to give some back. */
function heldByPreferments(formula: Formula): FormulaProblem[] {
  if (!(batchGrams(formula).doughGrams > 0)) return []
  const views = formulaViews(formula)
  return views.finalDough.rows.flatMap(({ ingredientId, name, grams }, index) => {
    const overallGrams = views.overall[index]?.grams ?? 0
    if (grams >= 0) return []
    const held = { ingredientId, name, overallGrams, prefermentGrams: overallGrams - grams }
    const path = `/ingredients/${index}/percent`
    return [{ path, severity: 'stop' as const, reason: 'preferment-holds-more' as const, ...held }]
  })
}
