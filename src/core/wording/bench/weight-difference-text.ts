import { decimalsOf, decimalText } from '@/core/units/number-text.ts'

/** How a reading stands to its target (grams), in words: "45 g short: add 45 g", "12 g over", "as planned". */
export function differenceText(grams: number, target: number): { words: string; off: boolean } {
  const decimals = Math.max(decimalsOf(grams), decimalsOf(target))
  const off = decimalText(Math.abs(grams - target), Math.min(decimals, 2))
  if (Number(off) === 0) return { words: 'as planned', off: false }
  return grams < target
    ? { words: `${off} g short: add ${off} g`, off: true }
    : { words: `${off} g over`, off: true }
}
