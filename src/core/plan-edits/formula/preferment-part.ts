import type { Preferment } from '@/core/formula/formula-record.ts'

/** The preferment with one of its parts at another percent of its flour; emptied (null), the part leaves it. */
export function withPart(
  one: Preferment,
  ingredientId: string,
  percent: number | null,
): Preferment {
  const others = one.parts.filter((part) => part.ingredientId !== ingredientId)
  if (percent === null) return { ...one, parts: others }
  const known = one.parts.some((part) => part.ingredientId === ingredientId)
  const parts = known
    ? one.parts.map((part) => (part.ingredientId === ingredientId ? { ...part, percent } : part))
    : [...others, { ingredientId, percent }]
  return { ...one, parts }
}
