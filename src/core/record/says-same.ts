/** Whether two records say the same, in whatever order their keys stand. */
export function saysSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a, inOrder) === JSON.stringify(b, inOrder)
}

function inOrder(_: string, value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value
  return Object.fromEntries(Object.entries(value).sort(([x], [y]) => (x < y ? -1 : 1)))
}
