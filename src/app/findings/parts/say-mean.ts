import { decimalText, withUnit } from '@/core/units/number-text.ts'
import { differenceDecimals, intervalText } from '@/core/wording/findings/difference-text.ts'

/** A mean with its interval in words, for the readout under a chart. */
export function sayMean(
  mean: { label: string; estimate: number; low: number | null; high: number | null },
  unit: string,
): string {
  const level = /^[−-]?[\d.]+$/.test(mean.label) ? withUnit(mean.label, unit) : mean.label
  if (mean.low === null || mean.high === null)
    return `${level}: mean ${decimalText(mean.estimate, 2)}`
  const decimals = differenceDecimals((mean.high - mean.low) / 2)
  return `${level}: mean ${decimalText(mean.estimate, decimals)}, between ${intervalText(mean.low, mean.high)}`
}
