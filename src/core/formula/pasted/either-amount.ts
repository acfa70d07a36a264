import { statedAmounts } from './stated-amount.ts'
import { wholeAmount } from './whole-amount.ts'

const orElse = /\s(?:or|oder|ou|o|oppure|bzw\.?)\s/iu

/** Whether a line offers one amount or another of something else: "20 g fresh yeast or 7 g dry". */
export function isEither(text: string): boolean {
  const bare = text.replace(/\([^()]*\)/gu, (inner) => (orElse.test(` ${inner} `) ? inner : ' '))
  const [one = '', other] = bare.split(orElse)
  if (other === undefined) return false
  const named = (part: string) =>
    statedAmounts(part).length > 0 && /\p{L}{3}/u.test(wholeAmount(part)?.rest ?? '')
  return named(one) && named(other)
}
