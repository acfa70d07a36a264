import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import { againstControl } from '@/core/statistics/block-model/against-control.ts'
import type { PairOfLevels } from '@/core/statistics/block-model/all-pairs.ts'
import {
  bendWeights,
  type LevelContrast,
  levelContrast,
  lineWeights,
} from '@/core/statistics/block-model/level-contrast.ts'
import type { ComparedLevels } from '@/core/statistics/block-model/level-difference.ts'
import { largerOfTwoP } from '@/core/statistics/distributions/largest-modulus.ts'
import { tHalfWidth, tTails, tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import type { Allowance, Asked, Shown, ShownBend, ShownLine, ShownPair } from './evidence-shape.ts'

/** The fit of what got its level separately, with all that its levels are asked. */
export interface QuestionInput {
  fit: ComparedLevels
  levelIds: readonly LevelId[]
  /** The levels' values in the factor's unit; null for a choice. */
  values: readonly number[] | null
  /** All pairs of the fit by Tukey and Kramer. */
  pairs: readonly PairOfLevels[]
  /** The usual among the levels, null when there is none. */
  usual: number | null
  margin: number | null
  /** Which middle of a bend is its best; high where it is not said. */
  good?: 'high' | 'low'
  asked: Asked
  allowance: Allowance
}

/** What a question showed, the expected first; `p` of its first step, whether shown or not. */
export interface Questioned {
  shown: Shown[]
  p: number
}

/**
 * The primary question of a response. With a written expectation two chains, each stopping at its first step that is not
 * shown: the expected at 4 %, the other, a surprise, at 1 %. Line: linear contrast; last less first, which gives the size; pairs. Bend: the
 * quadratic contrast freed from the line; inner levels against each end; pairs. Without one: the clearer of line and bend by
 * the maximum modulus of two, nothing further; a choice: Tukey's pairs, or Dunnett's against the usual where that was asked. Every
 * contrast has the error of the levels' own fit. Two levels are one pair. *No difference* expected: a difference shown is a
 * surprise. Worked out by simulation and quadrature for this project, checked against R.
 */
export function primaryQuestion(input: QuestionInput): Questioned {
  const { asked, allowance, values } = input
  if (asked.question === 'usual') return byUsual(input)
  if (values === null) return byPairs(input)
  const line = levelContrast(input.fit, lineWeights(values))
  const lineP = tTwoSidedP(line.t, line.df)
  if (values.length < 3) {
    const { expected } = asked
    const other = expected === 'no-difference' || expected === 'best-inside'
    const unexpected = other || against(asked, line)
    const shown = lineChain(input, line, lineP, allowance.all, unexpected)
    return { shown: shown ? [shown] : [], p: lineP }
  }
  const bend = levelContrast(input.fit, bendWeights(values))
  const bendP = tTwoSidedP(bend.t, bend.df)
  if (asked.question === 'line') {
    const expected = lineChain(input, line, lineP, allowance.expected, against(asked, line))
    const other = bendChain(input, bend, bendP, allowance.surprise, true)
    return { shown: [expected, other].filter((one) => one !== null), p: lineP }
  }
  if (asked.question === 'bend') {
    const worst = bend.estimate < 0 !== (input.good !== 'low')
    const expected = bendChain(input, bend, bendP, allowance.expected, worst)
    const other = lineChain(input, line, lineP, allowance.surprise, true)
    return { shown: [expected, other].filter((one) => one !== null), p: bendP }
  }
  return byTheClearer(input, line, bend)
}

function against({ expected }: Asked, { estimate }: LevelContrast): boolean {
  return (expected === 'rises' && estimate < 0) || (expected === 'falls' && estimate > 0)
}

function lineChain(
  input: QuestionInput,
  line: LevelContrast,
  p: number,
  alpha: number,
  unexpected: boolean,
): ShownLine | null {
  if (!(p <= alpha)) return null
  const { fit, levelIds, margin } = input
  const last = levelIds.length - 1
  const ends = levelContrast(fit, weightsOf(levelIds.length, [last, 1], [0, -1]))
  const shown: ShownLine = {
    is: 'line',
    goes: line.estimate > 0 ? 'rises' : 'falls',
    unexpected,
    p,
    size: null,
    pairs: [],
  }
  // A size whose ends go the other way than the line is no size of that line.
  if (!(tTwoSidedP(ends.t, ends.df) <= alpha) || ends.estimate > 0 !== line.estimate > 0)
    return shown
  const half = tHalfWidth(1 - alpha, ends.df) * ends.se
  const [low, high] = [ends.estimate - half, ends.estimate + half]
  return {
    ...shown,
    size: {
      between: [levelIds[0] as LevelId, levelIds[last] as LevelId],
      difference: ends.estimate,
      low,
      high,
      confidence: 1 - alpha,
      beyond: margin !== null && (low > margin || high < -margin),
    },
    pairs: shownPairs(input, alpha),
  }
}

function bendChain(
  input: QuestionInput,
  bend: LevelContrast,
  p: number,
  alpha: number,
  unexpected: boolean,
): ShownBend | null {
  if (!(p <= alpha)) return null
  const up = bend.estimate < 0
  const inside = innerBeyondEnds(input, up ? 1 : -1, alpha)
  return {
    is: 'bend',
    middle: up ? 'high' : 'low',
    unexpected,
    p,
    inside,
    pairs: inside ? shownPairs(input, alpha) : [],
  }
}

/** Do the inner levels together stand beyond each end, each one-sided? Both are needed, so neither needs a correction. */
function innerBeyondEnds({ fit, levelIds }: QuestionInput, sign: 1 | -1, alpha: number): boolean {
  const inner = 1 / (levelIds.length - 2)
  return [0, levelIds.length - 1].every((end) => {
    const weights: number[] = levelIds.map((_, at) => (at === end ? -1 : 0))
    for (let at = 1; at < levelIds.length - 1; at += 1) weights[at] = inner
    const { t, df } = levelContrast(fit, weights)
    return tTails(sign * t, df).upper <= alpha
  })
}

function byTheClearer(
  { asked, allowance }: QuestionInput,
  line: LevelContrast,
  bend: LevelContrast,
): Questioned {
  const none = asked.question === 'no-difference'
  const clearer = Math.max(Math.abs(line.t), Math.abs(bend.t))
  const p = largerOfTwoP(clearer, line.df)
  if (!(p <= allowance.all)) return { shown: [], p }
  const shown: Shown =
    Math.abs(line.t) >= Math.abs(bend.t)
      ? {
          is: 'line',
          goes: line.estimate > 0 ? 'rises' : 'falls',
          // A best in between was expected of a response that has no better side.
          unexpected: none || asked.expected === 'best-inside',
          p,
          size: null,
          pairs: [],
        }
      : {
          is: 'bend',
          middle: bend.estimate < 0 ? 'high' : 'low',
          unexpected: none,
          p,
          inside: false,
          pairs: [],
        }
  return { shown: [shown], p }
}

function byPairs(input: QuestionInput): Questioned {
  const pairs = shownPairs(input, input.allowance.all)
  const p = Math.min(1, ...input.pairs.map((pair) => pair.p))
  const unexpected = input.asked.question === 'no-difference'
  return {
    shown: pairs.length > 0 ? [{ is: 'pairs', against: 'all', unexpected, p, pairs }] : [],
    p,
  }
}

function byUsual({ fit, levelIds, usual, allowance }: QuestionInput): Questioned {
  if (usual === null) throw new Error('asked against a usual that is no level')
  const compared = againstControl(fit, usual)
  const pairs = compared
    .filter(({ p }) => p <= allowance.all)
    .map(({ level, difference, p }) => ({
      a: levelIds[usual] as LevelId,
      b: levelIds[level] as LevelId,
      difference,
      p,
    }))
  const p = Math.min(1, ...compared.map((one) => one.p))
  return {
    shown: pairs.length > 0 ? [{ is: 'pairs', against: 'usual', unexpected: false, p, pairs }] : [],
    p,
  }
}

function shownPairs({ pairs, levelIds }: QuestionInput, alpha: number): ShownPair[] {
  return pairs
    .filter(({ p }) => p <= alpha)
    .map(({ a, b, difference, p }) => ({
      a: levelIds[a] as LevelId,
      b: levelIds[b] as LevelId,
      difference,
      p,
    }))
}

function weightsOf(levels: number, ...set: readonly [number, number][]): number[] {
  const weights = Array.from({ length: levels }, () => 0)
  for (const [at, weight] of set) weights[at] = weight
  return weights
}
