/**
 * The same answer to the same question, worked out once: `record` is compared by identity, since a record once read never
 * changes, and its answers are kept as long as it lives. `beside` is what else the answer depends on.
 */
export function keptAnswer<Kept extends WeakKey, Beside, Answer>(
  answer: (record: Kept, beside: Beside) => Answer,
): (record: Kept, beside: Beside) => Answer {
  const known = new WeakMap<Kept, Map<Beside, Answer>>()
  return (record, beside) => {
    const answers = known.get(record) ?? new Map<Beside, Answer>()
    known.set(record, answers)
    const found = answers.get(beside)
    if (found !== undefined || answers.has(beside)) return found as Answer
    const fresh = answer(record, beside)
    answers.set(beside, fresh)
    return fresh
  }
}
