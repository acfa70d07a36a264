import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import type { BatchWeights, WeighLine } from './batch-weights.ts'
import type { DoseAdvice } from './dose-advice.ts'
import type { SharedDoseAnswer } from './shared-dose.ts'
import { goesFor, type Weighing } from './weigh.ts'

/** Something of the sheet that its scales weigh badly, once for all batches. */
export interface SheetTrouble {
  trouble: 'over-capacity' | 'below-scale' | 'coarse' | 'below-zero'
  /** What is weighed: an ingredient of a batch, a ripe starter, or what a shared dose is made with. */
  name: string
  /** The preferment or the shared dose it goes into; null for the final dough. */
  into: { prefermentId: string } | { dose: SharedDoseAnswer['by'] } | null
  /** Null for what is below zero: no scale weighs it. */
  scaleId: string | null
  /** The weight it is worst for, in g: the largest past a capacity, else the smallest. */
  targetGrams: number
  /** In how many goes that weight is weighed; 1 unless it is past every capacity. */
  goes: number
  relativeUncertainty: number
}

type Weighed = Pick<SheetTrouble, 'name' | 'into'> & { key: string; weighing: Weighing }

/**
 * Weights past every scale's capacity or below zero, and weights the scales show too coarsely or not at all; what the advice on stocks and
 * dry mixes speaks of already is left out, and so is a coarse dose, whose uncertainty stands beside its recipe.
 */
export function sheetTroubles(
  batches: readonly BatchWeights[],
  doses: readonly SharedDoseAnswer[],
  advice: readonly Pick<DoseAdvice, 'ingredientId'>[],
  scales: readonly Scale[],
): SheetTrouble[] {
  const advised = new Set(advice.map(({ ingredientId }) => ingredientId))
  const found = new Map<string, SheetTrouble>()
  const all = [
    ...batches.flatMap(({ lines }) => lines.flatMap((line) => ofLine(line, advised))),
    ...doses.flatMap((dose) => ofDose(dose, batches)),
  ]
  for (const { key, name, into, weighing } of all) {
    const { trouble, scaleId, targetGrams } = weighing
    if (trouble === null || trouble === 'no-scale') continue
    const capacity = scales.find(({ id }) => id === scaleId)?.capacityGrams ?? targetGrams
    const relativeUncertainty = weighing.relativeUncertainty ?? 0
    const goes = goesFor(targetGrams, capacity)
    const one = { trouble, name, into, scaleId, targetGrams, goes, relativeUncertainty }
    const before = found.get(`${trouble} ${key}`)
    if (!before || isWorse(one, before)) found.set(`${trouble} ${key}`, one)
  }
  return [...found.values()]
}

function isWorse(one: SheetTrouble, other: SheetTrouble): boolean {
  return one.trouble === 'over-capacity'
    ? one.targetGrams > other.targetGrams
    : one.targetGrams < other.targetGrams
}

function ofLine(line: WeighLine, advised: ReadonlySet<string>): Weighed[] {
  const { ingredientId, prefermentId, name, what, trouble } = line
  const saidAlready =
    (trouble === 'below-scale' || trouble === 'coarse') &&
    ingredientId !== null &&
    advised.has(ingredientId)
  if (saidAlready || (what === 'dose' && trouble === 'coarse')) return []
  const into = line.into === 'preferment' && prefermentId !== null ? { prefermentId } : null
  return [{ key: `${line.key} ${name}`, name, into, weighing: line }]
}

function ofDose(dose: SharedDoseAnswer, batches: readonly BatchWeights[]): Weighed[] {
  if (!dose.ok) return []
  const lines = batches.flatMap((batch) => batch.lines)
  const nameOf = (id: string) => lines.find(({ ingredientId }) => ingredientId === id)?.name ?? ''
  const key = `dose ${dose.ingredientId} ${dose.stage?.prefermentId ?? ''}`
  const into = { dose: dose.by }
  const { ingredientId, carrierId, ingredient, carrier } = dose
  return [
    { key: `${key} a`, name: nameOf(ingredientId), into, weighing: ingredient },
    { key: `${key} b`, name: nameOf(carrierId), into, weighing: carrier },
  ].filter(({ weighing }) => weighing.trouble === 'over-capacity')
}
