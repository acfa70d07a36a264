import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Asked } from './evidence-shape.ts'

/**
 * The question of a response: what was written before the first mix fixes it for the main response; others have none, and are
 * asked for the clearer of line and bend, a choice for all pairs. Against the usual alone only where that was written, of a choice or where
 * nothing was expected, and the usual has values (`usual`).
 */
export function askedOf(scores: ScoreTable, index: number, usual: boolean): Asked {
  const { expectation, written, factor } = scores
  const expected = index === 0 ? (expectation?.direction ?? null) : null
  const compared = written?.againstUsual === true && usual
  if (expected === 'no-difference') return { question: 'no-difference', expected }
  if (compared && (!factor.ordered || expected === null)) return { question: 'usual', expected }
  if (!factor.ordered) return { question: 'pairs', expected }
  if (expected === null) return { question: 'line-or-bend', expected }
  if (expected === 'best-inside') {
    // Which side of a target is better changes along the levels, and without a better side nothing is best.
    const { better } = scores.responses[index] ?? { better: { is: 'neither' } }
    const sided = better.is === 'higher' || better.is === 'lower'
    return { question: sided ? 'bend' : 'line-or-bend', expected }
  }
  return { question: 'line', expected }
}
