import { EigenvalueDecomposition, Matrix } from 'ml-matrix'

/**
 * The real roots of a polynomial, ascending; `coefficients` from the constant up. They are the eigenvalues of the companion
 * matrix (Edelman & Murakami 1995, Math Comp 64:763; from memory), each polished by Newton steps.
 * Leading coefficients below 1e-14 of the largest count as zero; a root counts as real when its imaginary part is below 1e-7.
 */
export function realRoots(coefficients: readonly number[]): number[] {
  const largest = Math.max(...coefficients.map(Math.abs))
  const kept = [...coefficients]
  while (kept.length > 1 && Math.abs(kept.at(-1) as number) <= 1e-14 * largest) kept.pop()
  const degree = kept.length - 1
  if (degree < 1) return []
  const lead = kept[degree] as number
  if (degree === 1) return [-(kept[0] as number) / lead]
  const companion = Matrix.zeros(degree, degree)
  for (let i = 0; i < degree; i += 1) {
    companion.set(i, degree - 1, -(kept[i] as number) / lead)
    if (i > 0) companion.set(i, i - 1, 1)
  }
  const { realEigenvalues, imaginaryEigenvalues } = new EigenvalueDecomposition(companion)
  return realEigenvalues
    .filter((real, i) => Math.abs(imaginaryEigenvalues[i] as number) <= 1e-7 * (1 + Math.abs(real)))
    .map((root) => polish(kept, root))
    .sort((p, q) => p - q)
}

/** Value of a polynomial by Horner's rule. */
export function polynomialAt(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0)
}

function polish(coefficients: readonly number[], start: number): number {
  const derivative = coefficients.slice(1).map((value, i) => value * (i + 1))
  let root = start
  for (let round = 0; round < 3; round += 1) {
    const step = polynomialAt(coefficients, root) / polynomialAt(derivative, root)
    if (!Number.isFinite(step) || Math.abs(step) > 1e-4 * (1 + Math.abs(root))) break
    root -= step
  }
  return root
}
