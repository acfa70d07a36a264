import type { IngredientKind } from './formula-record.ts'
import { headOfName, withoutUse } from './head-of-name.ts'
import { kindOfWords } from './ingredient-words.ts'
import type { YeastForm } from './yeast-conversion.ts'

const preferments =
  /(?<!\p{L})(?:(?:sourdough|levain|wheat|rye|liquid|stiff)?\s*starter|levain|leaven|sourdough|\p{L}*sauerteig|(?:weizen|roggen|dinkel|vollkorn)?sauer|(?:rye |wheat |spelt )?sour|anstellgut|asg|lievitino|li\.?co\.?li\.?|\p{L}*poolish|pouliche|biga|pre-?ferment|pr[ée]ferment(?:o)?|sponge|\p{L}*vorteig|hebel|dampfl|(?:lievito|pasta|masa) madre|(?:p[aâ]te ferment[eé]e)|pasta (?:di riporto|acida)|(?:old|mother) dough|alt(?:er )?teig|tangzhong|yudane|br[üu]hst[üu]ck|quellst[üu]ck|kochst[üu]ck|mehlkochst[üu]ck|scald|soaker)s?(?!\p{L})(.*)$/iu
/** A grain behind the word tells of the preferment ("starter 100 % rye"); only "rye flour" would be what goes into it. */
const grains =
  /rye|spelt|einkorn|durum|emmer|kamut|whole ?wheat|wholemeal|seigle|segale|farro|épeautre|roggen|dinkel|weizen/giu
const noDough =
  /powder|dried|dry|bread|crumb|cake|cream|pulver|getrocknet|déshydraté|disidratato|secco/iu

/**
 * What an ingredient is, guessed from the head of its name for the baker to correct ("water, for the yeast" is water); `dry
 * milk`, sugar, malt and seeds are `other`, and so is a preferment. Flour may be told behind a comma or in brackets too.
 */
export function kindOfName(name: string): IngredientKind {
  return knownKindOfName(name) ?? 'other'
}

/** The same, or null where no word of the name is known in English, German, French or Italian. */
export function knownKindOfName(name: string): IngredientKind | null {
  if (isPreferment(name)) return 'other'
  const dried = kindOfWords(name) === 'other' && /dried|dry|powder/iu.test(name)
  if (dried) return 'other'
  const kind = kindOfWords(headOfName(name))
  if (kind !== null) return kind
  return kindOfWords(withoutUse(name)) === 'flour' ? 'flour' : null
}

/**
 * Whether a name tells of flour and water already mixed (a starter, levain, poolish, biga, tangzhong), rather than of what
 * goes into it ("levain flour", "water for the biga").
 */
export function isPreferment(name: string): boolean {
  const head = headOfName(name).split(/\s(?:of|de|di|aus)\s/iu)[0] ?? ''
  const found = preferments.exec(head)
  return (
    found !== null &&
    !noDough.test(head) &&
    kindOfWords((found[1] ?? '').replace(grains, ' ')) === null
  )
}

const fresh =
  /fresh|cake|compressed|brewer|frisch|würfel|fra[iî]che|cubetto|(?<!\p{L})fresco(?!\p{L})/iu
const activeDry = /active|traditional|s[eè]che active/iu
const instant =
  /instant|rapid|quick|easy|bread machine|trocken|dry|dried|s[eè]che|secco|disidratato|istantane|d[ée]shydrat|sachet|bustina|osmotolerant/iu

/** The form of yeast a name tells of; instant where it does not say. */
export function yeastFormOfName(name: string): YeastForm {
  return saidYeastForm(name) ?? 'instant'
}

/** The form of yeast that a name says outright; null where it only says yeast. */
export function saidYeastForm(name: string): YeastForm | null {
  if (fresh.test(name)) return 'fresh'
  if (activeDry.test(name)) return 'active-dry'
  return instant.test(name) ? 'instant' : null
}
