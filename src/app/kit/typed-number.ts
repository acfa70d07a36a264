export type TypedNumber =
  | { ok: true; value: number | null }
  | { ok: false; reason: 'not-a-number' | 'thousands-or-decimals' }

const decimal = /^[-−+]?(\d+([.,]\d*)?|[.,]\d+)$/
const unclear = /^[-−+]?[1-9]\d{0,2},\d{3}$/

/**
 * Reads what a person typed into a number field: decimal comma or point, spaces between thousands, either minus sign;
 * nothing typed is null. Refuses text that is no number, and "1,250", which is a thousand to some and one to others.
 */
export function typedNumber(text: string): TypedNumber {
  const bare = text.replace(/[\s\u00a0\u2009\u202f]/g, '')
  if (bare === '') return { ok: true, value: null }
  if (unclear.test(bare)) return { ok: false, reason: 'thousands-or-decimals' }
  if (!decimal.test(bare)) return { ok: false, reason: 'not-a-number' }
  return { ok: true, value: Number(bare.replace('−', '-').replace(',', '.')) }
}
