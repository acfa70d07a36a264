/** How far a value is from its reference, relative to the reference; 0 when both are the same, infinite ones included. */
export function relativeError(found: number, reference: number): number {
  if (found === reference) return 0
  return Math.abs(found - reference) / Math.abs(reference)
}

/** The worst relative error over some cases, with the case it stands at. */
export function worst<Case>(
  cases: readonly Case[],
  errorOf: (one: Case) => number,
): { error: number; at: Case | undefined } {
  let result: { error: number; at: Case | undefined } = { error: 0, at: undefined }
  for (const one of cases) {
    const error = errorOf(one)
    if (!(error <= result.error)) result = { error, at: one }
  }
  return result
}
