/**
 * The same record, closed against change all the way down. Answers are kept by a record's identity, so whoever writes into
 * one would go on reading what was worked out before: in development and tests that throws at once.
 */
export function frozen<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value
  for (const part of Object.values(value)) frozen(part)
  return Object.freeze(value)
}
