import { type Chance, shuffled, wholeBetween } from './chance.ts'

export type DealtCodes =
  | { ok: true; codes: string[] }
  | { ok: false; reason: 'codes-run-out'; asked: number; left: number }

/** Two codes that a tired taster mixes up: the same, or one the other with two neighbouring digits swapped. */
export function codesConflict(one: string, other: string): boolean {
  return one === other || neighbours(one).includes(other)
}

/**
 * Deals three-digit serving codes, 100 to 999, unlike each other and every code `used` in the trial so far, none another's
 * swap of two neighbouring digits. Digits are dealt family by family (all codes of the same three digits), each family
 * giving one of its largest sets without conflict, so that all 495 codes can be reached. Three digits, drawn anew for each
 * session: common practice in sensory work. Refuses with `codes-run-out` when fewer are left than asked.
 */
export function dealCodes(chance: Chance, count: number, used: readonly string[]): DealtCodes {
  const taken = new Set(used)
  const pool = families().flatMap((family) => freeOf(chance, family, taken))
  if (pool.length < count)
    return { ok: false, reason: 'codes-run-out', asked: count, left: pool.length }
  return { ok: true, codes: shuffled(chance, pool).slice(0, count) }
}

function neighbours(code: string): string[] {
  const [a, b, c] = code
  return [`${b}${a}${c}`, `${a}${c}${b}`]
}

function families(): string[][] {
  const byDigits = new Map<string, string[]>()
  for (let number = 100; number <= 999; number += 1) {
    const code = String(number)
    const digits = [...code].toSorted((one, other) => Number(one) - Number(other)).join('')
    byDigits.set(digits, [...(byDigits.get(digits) ?? []), code])
  }
  return [...byDigits.values()]
}

function freeOf(chance: Chance, family: string[], taken: Set<string>): string[] {
  const open = family.filter(
    (code) => !taken.has(code) && !neighbours(code).some((other) => taken.has(other)),
  )
  const sets = setsWithoutConflict(open)
  const largest = Math.max(...sets.map((set) => set.length))
  const best = sets.filter((set) => set.length === largest)
  return best[wholeBetween(chance, 0, best.length - 1)] ?? []
}

function setsWithoutConflict(codes: string[]): string[][] {
  const [code, ...others] = codes
  if (code === undefined) return [[]]
  const without = setsWithoutConflict(others)
  const withIt = without.filter((set) => !set.some((other) => codesConflict(code, other)))
  return [...without, ...withIt.map((set) => [code, ...set])]
}
