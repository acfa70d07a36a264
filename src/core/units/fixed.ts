/**
 * A number with exactly so many decimals, halves rounded away from zero on the decimal digits a person sees
 * (1.005 to two decimals is 1.01, although the nearest double lies below it). Never prints "-0".
 */
export function toFixedDecimals(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new Error(`no digits to print in ${value}`)
  const shifted = shiftPoint(Math.abs(value), decimals)
  const text = shiftPoint(Math.round(shifted), -decimals).toFixed(decimals)
  return value < 0 && Number(text) !== 0 ? `-${text}` : text
}

/** The number with its decimal point moved, by way of its shortest decimal digits, so that no binary dust comes in. */
function shiftPoint(value: number, places: number): number {
  if (places === 0) return value
  const [digits = '0', exponent = '0'] = String(value).split('e')
  return Number(`${digits}e${Number(exponent) + places}`)
}
