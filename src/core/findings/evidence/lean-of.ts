import {
  bendWeights,
  levelContrast,
  lineWeights,
} from '@/core/statistics/block-model/level-contrast.ts'
import type { Lean } from './conclusion-shape.ts'
import type { QuestionInput } from './primary-question.ts'

/** A lean needs so much: chance alone leans as far in one of five trials in which the factor does nothing. */
export const leanBelow = 0.2

/** Which way it leans where nothing is shown and the first step's `p` lies below 0.2; null else. */
export function leanOf(
  { fit, levelIds, values, pairs, asked }: QuestionInput,
  p: number,
): Lean | null {
  if (!(p < leanBelow)) return null
  if (values !== null && asked.question !== 'usual') {
    const line = levelContrast(fit, lineWeights(values))
    const bend = values.length < 3 ? null : levelContrast(fit, bendWeights(values))
    const byLine =
      asked.question === 'line' ||
      bend === null ||
      (asked.question !== 'bend' && Math.abs(line.t) >= Math.abs(bend.t))
    if (byLine) return { is: 'line', goes: line.estimate > 0 ? 'rises' : 'falls', p }
    return { is: 'bend', middle: bend.estimate < 0 ? 'high' : 'low', p }
  }
  const clearest = pairs.toSorted((a, b) => a.p - b.p)[0]
  if (!clearest) return null
  const [higher, lower] =
    clearest.difference > 0 ? [clearest.b, clearest.a] : [clearest.a, clearest.b]
  const [up, down] = [levelIds[higher], levelIds[lower]]
  return up === undefined || down === undefined ? null : { is: 'pairs', higher: up, lower: down, p }
}
