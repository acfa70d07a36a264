export type JustRightShares = { below: number; right: number; above: number; n: number }

/**
 * Shares of answers below, at and above the middle of a just-about-right scale; zeros where there is no answer.
 *
 * @example justRightShares([1, 3, 3, 5], 3) // {"below": 0.25, "right": 0.5, "above": 0.25, "n": 4} (by hand)
 */
export function justRightShares(answers: readonly number[], middle: number): JustRightShares {
  const n = answers.length
  const share = (holds: (answer: number) => boolean) =>
    n === 0 ? 0 : answers.filter(holds).length / n
  return {
    below: share((answer) => answer < middle),
    right: share((answer) => answer === middle),
    above: share((answer) => answer > middle),
    n,
  }
}
