import type { RankingAsked } from '@/core/trial/at-table.ts'

/** Codes by their place, the first place first; codes that share a place stand together. */
export type Ranked = string[][]

/** What stands between an order and one that may be sealed, with the codes that it is about. */
export interface RankingTrouble {
  reason: 'missing' | 'unknown' | 'twice' | 'shared'
  codes: string[]
}

/**
 * An order as it is typed and kept while it is unfinished: codes with a space between, `=` between those that share a place,
 * such as `521 877=402`.
 */
export function rankedText(ranked: Ranked): string {
  return ranked.map((place) => place.join('=')).join(' ')
}

/** The order in such a text; commas count as spaces, and what is no code stands as it was typed. */
export function readRanked(text: string): Ranked {
  return text
    .replace(/\s*=\s*/g, '=')
    .split(/[\s,;]+/)
    .map((place) => place.split('=').filter((code) => code !== ''))
    .filter((place) => place.length > 0)
}

/**
 * Checks an order against what is to be put in it: every code once, none else, and none beside another where places are not
 * shared. The first trouble in that order of weight: a code that is not one of them, one named twice, a shared place, one
 * that is missing. Null where it may be sealed.
 */
export function rankingTrouble(
  ranked: Ranked,
  { codes, ties }: Pick<RankingAsked, 'ties'> & { codes: readonly string[] },
): RankingTrouble | null {
  const named = ranked.flat()
  const unknown = named.filter((code) => !codes.includes(code))
  if (unknown.length > 0) return { reason: 'unknown', codes: unknown }
  const twice = named.filter((code, at) => named.indexOf(code) !== at)
  if (twice.length > 0) return { reason: 'twice', codes: twice }
  const shared = ties ? [] : ranked.filter((place) => place.length > 1).flat()
  if (shared.length > 0) return { reason: 'shared', codes: shared }
  const missing = codes.filter((code) => !named.includes(code))
  return missing.length > 0 ? { reason: 'missing', codes: missing } : null
}

/**
 * One press on a code: it takes the next place, or with `shares` the place of the last one that was pressed; one that has a
 * place loses it, and what came after moves up.
 */
export function pressedCode(ranked: Ranked, code: string, shares: boolean): Ranked {
  if (ranked.some((place) => place.includes(code)))
    return ranked
      .map((place) => place.filter((each) => each !== code))
      .filter((place) => place.length > 0)
  const last = ranked.at(-1)
  return shares && last ? [...ranked.slice(0, -1), [...last, code]] : [...ranked, [code]]
}

/**
 * Each code's place from 1, those that share one having the mean of the places that they take up (midranks, as Friedman's test
 * wants them): of one first and two that share the next, 1 and twice 2.5.
 */
export function placesOf(ranked: Ranked): Map<string, number> {
  let before = 0
  const places = new Map<string, number>()
  for (const place of ranked) {
    for (const code of place) places.set(code, before + (place.length + 1) / 2)
    before += place.length
  }
  return places
}
