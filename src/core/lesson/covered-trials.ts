/**
 * Of these trials, those whose answer a lesson on this device covers, each once. Whatever says, shows, sorts or finds by the answer of
 * a trial asks here first: the home list and its search, lines of questions, house formulas that rest on it, trials together,
 * Findings and Report.
 */
export function coveredTrials(trialIds: readonly string[], lessons: readonly string[]): string[] {
  return [...new Set(trialIds)].filter((trialId) => lessons.includes(trialId))
}

/** A line of the notebook without its answer, while a lesson covers that. */
export function withoutCovered<Line extends { trialId: string; answer?: string }>(
  line: Line,
  lessons: readonly string[],
): Omit<Line, 'answer'> & { answer?: string } {
  if (coveredTrials([line.trialId], lessons).length === 0) return line
  const { answer: _, ...rest } = line
  return rest
}
