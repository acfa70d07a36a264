import { gramsFrom } from '@/core/units/mass.ts'
import { isEither } from './either-amount.ts'
import type { LineTrouble } from './line-trouble.ts'
import { nameIn, ofItself, percentOfFlour, withoutDegrees } from './name-in-line.ts'
import { spoons } from './spoons.ts'
import { percentAmount, readAmount, withUnitAtEach } from './stated-amount.ts'
import { wholeAmount } from './whole-amount.ts'

/** What was understood of one ingredient of a pasted text, or why it was not. */
export type ReadAmount =
  | {
      ok: true
      name: string
      grams: number
      percent: null
      fromVolume: boolean
      /** A percent that stands beside the weight. */
      besidePercent: number | null
    }
  | { ok: true; name: string; grams: null; percent: number; fromVolume: false }
  | { ok: false; reason: LineTrouble; name: string }

const bareNumber = /[\d\u00bc-\u00be\u2150-\u215e]/u
const powerOfTen = /\d\s*e\s*[+-]?\d/iu
/** What may stand before a line of a list; a dash right before a figure is a minus. */
const bullets =
  /^(?:[\s*\u2022\u00b7\u25a1\u2610\u2611\u2713\u2714#>]|\[[ x]?\]|\p{Pd}(?![\d.,]))+/u
/** The number of a line in a list: "1. Flour 500 g", "2) 350 g water". */
const lineNumber = /^(?:\(\d{1,2}\)|\d{1,2}[.)]|(?:no\.?|nr\.?|n°)\s*\d{1,2}[:.)]?)\s+(?=\S)/iu
const minus = /(?:^|\s)[\p{Pd}\u2212]$/u
const someRange =
  /\d\s*(?:g|kg|ml|%|oz|lb)?\s*(?:-|\u2013|\u2014|(?<!\p{L})(?:to|bis|à)(?!\p{L}))\s*\d/iu
/** A range right before the amount itself, rather than in the name ("T55/65"). */
const rangeBefore = /\d\s*(?:g|kg|ml|%|oz|lb)?\s*(?:[-\u2013\u2014]|to|bis|à)\s*$/iu
const ofEach = /(?<!\p{L})(?:each|apiece|jeweils|chacune?s?|ciascun[oa]|l'un[oa])(?!\p{L})/iu
const ifWanted =
  /(?<!\p{L})(?:optional|if (?:wanted|liked|using)|nach belieben|wahlweise|facultati[fv]e?|optionnel(?:le)?|facoltativ[oa]|opzionale)(?!\p{L})/iu
/** An amount that is part of another in its line. */
const ofWhich = /\d.*(?<!\p{L})(?:davon|of which|dont|di cui|including|inkl\.)(?!\p{L}).*\d/iu
/** A number without a unit where an amount would stand; the type of a flour is none. */
const bareAmount = /(?:[\s:]|^)\d+(?:[.,]\d+)?$|^\d+(?:[.,]\d+)?\s/u
const flourType =
  /(?:mehl|flour|farin[ae]|type|typ|tipo|vollkorn)\s*(?:0{1,2}|1|2|45|55|65|80|110|130|150|170|400|405|550|630|720|812|997|1050|1100|1150|1200|1370|1600|1700|1740|1900)$/iu
const pourable =
  /water|wasser|(?<!\p{L})(?:eau|acqua|lait|latte|panna|jus|succo|birra)(?!\p{L})|milk|milch|cream|crème|sahne|rahm|yog|jogurt|joghurt|yaourt|whey|molke|juice|saft|beer|(?<!\p{L})bier(?!\p{L})|bière/iu
const perKilogram =
  /(\d+(?:[.,]\d+)?)\s*(?:g|gr|grams?|gramm|grammes?|grammi)\s*(?:\/|per|pro|par|je|auf|al|a|for each|pour)\s*(?:(\d+)\s*)?(kg|kilo|kilogram|g|chilo)(?!\p{L})(?:\s*(?:of|de|di|d'|an)?\s*(?:the\s|la\s)?(?:flours?|mehl|farine|farina))?/iu

/** A line of a list without its bullet, box or number. */
export function withoutBullet(line: string): string {
  const bare = line.replace(/\*\*|__/gu, '').replace(bullets, '')
  return bare.replace(lineNumber, '').trim()
}

/** A weight told for each kilogram of flour ("20 g per kg of flour", "2 g per 100 g flour") as a percent of the flour. */
function withPercentForShare(text: string): string {
  const found = perKilogram.exec(text)
  if (!found) return text
  const [all, grams = '', count, unit = ''] = found
  const per = gramsFrom(Number(count ?? 1), unit.toLowerCase() === 'g' ? 'g' : 'kg')
  const share = readAmount(grams)
  if (!share.ok || per < 100) return text
  return text.replace(all, ` ${Math.round((share.grams / per) * 1e8) / 1e6} % `)
}

/**
 * One ingredient of a pasted formula with its amount and unit before or after the name. Volumes are taken for water and
 * thin liquids at 1 g/mL only; cups, spoons and counts are refused, since they weigh differently in every kitchen; a range,
 * a number that can be read two ways, a choice of two and a second ingredient are refused rather than guessed.
 */
export function readLine(line: string): ReadAmount {
  const text = withUnitAtEach(withPercentForShare(withoutDegrees(withoutBullet(line))))
  const mass = wholeAmount(text)
  const anyPercent = percentAmount.exec(text)
  const percent = mass ? null : anyPercent
  const rest = mass?.rest ?? (percent ? text.replace(percent[0], ' ') : text)
  const name = nameIn(rest.replace(percentAmount, ' '))
  const refuse = (reason: LineTrouble): ReadAmount => ({ ok: false, reason, name })
  if (ofWhich.test(text)) return refuse('several-amounts')
  if (ifWanted.test(text)) return refuse('if-wanted')
  if (isEither(text)) return refuse('one-or-the-other')
  const found = mass?.ok ? mass.before : percent ? text.slice(0, percent.index) : null
  const isPart = found === null ? !mass : rangeBefore.test(found.slice(-10))
  if (isPart && someRange.test(text)) return refuse('range')
  if (mass && !mass.ok) return refuse(mass.reason)
  if (found === null) {
    if (spoons.test(text)) return refuse('cups-and-spoons')
    if (powerOfTen.test(text)) return refuse('not-a-number')
    return refuse(bareNumber.test(text) ? 'pieces-not-weighed' : 'no-amount')
  }
  if (minus.test(found)) return refuse('too-small')
  if (mass && ofEach.test(text)) return refuse('of-how-many')
  const read = readAmount(percent?.[1] ?? '0')
  if (!read.ok) return refuse(read.reason)
  if (name === '') return refuse('no-name')
  if (!mass && bareAmount.test(name) && !flourType.test(name)) return refuse('pieces-not-weighed')
  if (!mass) return { ok: true, name, grams: null, percent: read.grams, fromVolume: false }
  const { grams, fromVolume } = mass
  if (fromVolume && !pourable.test(name)) return refuse('volume-of-no-water')
  if (grams > 1e6) return refuse('too-large')
  return { ok: true, name, grams, percent: null, fromVolume, besidePercent: besideIn(text, name) }
}

function besideIn(text: string, name: string): number | null {
  const of = percentOfFlour.exec(text) ?? percentAmount.exec(text)
  if (of?.[1] === undefined) return null
  if (!percentOfFlour.test(text) && ofItself(text, name)) return null
  const read = readAmount(of[1])
  return read.ok ? read.grams : null
}
