import type { Formula } from '@/core/formula/formula-record.ts'
import type { Scale } from '@/core/kitchen/kitchen-record.ts'
import type { ActsOn } from '@/core/trial/factor.ts'
import { type LevelShare, levelShare } from '@/core/trial/level-ratio.ts'
import {
  type Achieved,
  achieved,
  achievedLevel,
  type LevelTerm,
  type SharedError,
} from './achieved-level.ts'
import { carrierLine, doseKey } from './dose-asked.ts'
import type { DoughLine } from './dough-lines.ts'
import type { SharedDoseRecipe } from './shared-dose.ts'
import { readingUncertainty, unweighed, type Weighing, weigh } from './weigh.ts'

/** A line of the weigh sheet: what to weigh, on which scale, and what it does to the level. */
export interface WeighLine extends Omit<DoughLine, 'targetGrams' | 'what'>, Weighing {
  what: DoughLine['what'] | 'dose'
  /** What a gram of it adds above and below the line of the level; null when the factor is no percentage. */
  share: LevelShare | null
  /** Moisture of the flour in it, %; null without flour, and where its bag's is not known. */
  flourMoisturePercent: number | null
}

export interface BatchWeights {
  levelId: string | null
  label: string
  /** The level as planned, in the factor's unit; null for a choice, or one dough for all. */
  planned: number | null
  formula: Formula
  lines: WeighLine[]
  doughGrams: number
  /** The level that the rounded weights make; null where the factor is not read from weights. */
  achieved: Achieved | null
  /** The same dough with its flour taken at 14 % moisture; null where the factor is not hydration or a moisture is not known. */
  atFourteen: number | null
  sharedErrors: SharedError[]
}

/** The weigh lines of one batch with doses in place of what they replace, and the carrier's own line lessened by its share. */
export function weighLines(
  batchKey: string,
  lines: readonly DoughLine[],
  formula: Formula,
  acts: ActsOn,
  doses: readonly SharedDoseRecipe[],
  scales: readonly Scale[],
  moistureOf: (part: Pick<DoughLine, 'ingredientId' | 'prefermentId'>) => number | null,
): WeighLine[] {
  const taken = new Map<string, number>()
  const dosed = new Map<string, { weighing: Weighing; recipe: SharedDoseRecipe }>()
  for (const recipe of doses) {
    for (const line of lines) {
      const dose = recipe.doses.find(({ key }) => key === doseKey(batchKey, line))
      const carrier = dose ? carrierLine(lines, line, recipe.by, recipe.carrierId) : null
      if (!dose || !carrier) continue
      dosed.set(line.key, { weighing: dose, recipe })
      taken.set(carrier.key, (taken.get(carrier.key) ?? 0) + dose.carrierGrams)
    }
  }
  return lines.map((line): WeighLine => {
    const plain = levelShare(formula, acts, line)
    const dose = dosed.get(line.key)
    if (dose) {
      const share = doseShare(plain, formula, acts, line, dose.recipe)
      const carrier = { ingredientId: dose.recipe.carrierId, prefermentId: null }
      return weighLine(line, 'dose', dose.weighing, reaching(line, share), moistureOf(carrier))
    }
    if (line.what === 'all-of-preferment')
      return weighLine(line, line.what, unweighed(line.targetGrams, null), null, null)
    const weighing = weigh(line.targetGrams - (taken.get(line.key) ?? 0), scales)
    return weighLine(line, line.what, weighing, reaching(line, plain), moistureOf(line))
  })
}

/** What a shared dose's strength does to the level, an error all batches have in common. */
export function sharedErrorsOf(
  lines: readonly WeighLine[],
  formula: Formula,
  acts: ActsOn,
  doses: readonly SharedDoseRecipe[],
): SharedError[] {
  return doses.flatMap((recipe) => {
    let moves: LevelShare = { above: 0, below: 0 }
    for (const line of lines) {
      if (line.what !== 'dose' || line.ingredientId !== recipe.ingredientId) continue
      const stage = line.into === 'preferment' ? line.prefermentId : null
      if (recipe.stage && recipe.stage.prefermentId !== stage) continue
      const [own, carrier] = sharesOf(formula, acts, line, recipe)
      if (!own || !carrier) return []
      moves = {
        above: moves.above + line.grams * line.reachesDough * (own.above - carrier.above),
        below: moves.below + line.grams * line.reachesDough * (own.below - carrier.below),
      }
    }
    return [{ ...moves, uncertainty: recipe.strengthUncertainty }]
  })
}

/** The level of a batch from its weighed lines; null for a factor that is not read from weights. */
export function achievedOf(
  lines: readonly WeighLine[],
  errors: readonly SharedError[],
): Achieved | null {
  const terms: LevelTerm[] = []
  for (const { share, grams, uncertaintyGrams } of lines)
    if (share) terms.push({ above: share.above, below: share.below, grams, uncertaintyGrams })
  return terms.length > 0 ? achievedLevel(terms, errors) : null
}

/** A piece's mass as the scale can portion it. */
export function achievedPiece(pieceGrams: number, scales: readonly Scale[]): Achieved | null {
  const weighing = weigh(pieceGrams, scales)
  const { grams, uncertaintyGrams, scaleId } = weighing
  return scaleId === null ? null : achieved(grams, uncertaintyGrams, readingUncertainty(weighing))
}

/** Field by field: merging two records of ten fields for every line of every batch cost most of the sheet's time. */
function weighLine(
  line: DoughLine,
  what: WeighLine['what'],
  weighing: Weighing,
  share: LevelShare | null,
  flourMoisturePercent: number | null,
): WeighLine {
  return {
    key: line.key,
    into: line.into,
    what,
    ingredientId: line.ingredientId,
    prefermentId: line.prefermentId,
    name: line.name,
    kind: line.kind,
    reachesDough: line.reachesDough,
    targetGrams: weighing.targetGrams,
    grams: weighing.grams,
    scaleId: weighing.scaleId,
    resolutionGrams: weighing.resolutionGrams,
    uncertaintyGrams: weighing.uncertaintyGrams,
    sharedUncertaintyGrams: weighing.sharedUncertaintyGrams,
    relativeUncertainty: weighing.relativeUncertainty,
    trouble: weighing.trouble,
    share,
    flourMoisturePercent,
  }
}

/** What a gram weighed does to the level: nothing of what stays in the jar. */
function reaching({ reachesDough }: DoughLine, share: LevelShare | null): LevelShare | null {
  if (!share || reachesDough === 1) return share
  return { above: share.above * reachesDough, below: share.below * reachesDough }
}

function doseShare(
  plain: LevelShare | null,
  formula: Formula,
  acts: ActsOn,
  line: DoughLine,
  recipe: SharedDoseRecipe,
): LevelShare | null {
  const [, carrier] = sharesOf(formula, acts, line, recipe)
  if (!plain || !carrier) return null
  const { strength } = recipe
  return {
    above: plain.above * strength + carrier.above * (1 - strength),
    below: plain.below * strength + carrier.below * (1 - strength),
  }
}

function sharesOf(
  formula: Formula,
  acts: ActsOn,
  line: Pick<DoughLine, 'ingredientId' | 'prefermentId'>,
  recipe: SharedDoseRecipe,
) {
  const carrier = { ingredientId: recipe.carrierId, prefermentId: line.prefermentId }
  return [levelShare(formula, acts, line), levelShare(formula, acts, carrier)] as const
}
