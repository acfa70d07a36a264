import { spoons } from './spoons.ts'

const flourWord = String.raw`(?:total\s+)?(?:flours?(?:\s+weight)?|mehl(?:s|menge|gewicht|gewichts)?|farine|farina|poids de (?:la )?farine|peso della farina)`
/** "12 % of flour", "2 % der Mehlmenge", "2 % du poids de farine", "2 % sulla farina". */
export const percentOfFlour = new RegExp(
  String.raw`(\d+(?:[.,]\d+)?)\s*%\s*(?:of|on|der|vom|des|auf|bezogen auf|de|du|sur|sulla|della|di|su)\s+(?:the\s+|la\s+|das\s+|die\s+)?${flourWord}(?!\p{L})`,
  'iu',
)
/** A percent that tells of the thing itself, not of the dough: "82 % fat", "100 % hydration". */
const described =
  /%\s*(?:fat|fett|mat(?:ière|\.)?\s*grasse|m\.?g\.?|grassi|i\. ?tr|protein\p{L}*|eiweiss(?:gehalt)?|protéines?|proteine|ash|asche|moisture|feuchte|cocoa|kakao|cacao|solids|salt(?:ed)?|alcohol|vol|extraction|hydr\p{L}*|idrat\p{L}*|rye|spelt|whole ?wheat|roggen|seigle|segale)(?!\p{L})|(?:fat|fett|protein\p{L}*|hydr\p{L}*|idrat\p{L}*|ta)\.?:?\s*(?:von\s|à\s|of\s|al\s)?\d+(?:[.,]\d+)?\s*%/iu
const fatOfMilk =
  /milk|milch|(?<!\p{L})lait(?!\p{L})|latte|cream|crème|sahne|rahm|panna|yog|joghurt|jogurt|yaourt|quark/iu

/** Whether the percent of a line says what the ingredient is like, not how much of it is taken. */
export function ofItself(text: string, name: string): boolean {
  return described.test(text) || fatOfMilk.test(name)
}

/** Whether a piece of a line says nothing but what its ingredient is like: "82 % fat". */
export function onlyDescribes(piece: string): boolean {
  return described.test(piece) && !/\d\s*(?:g|kg|ml|oz|lb)(?!\p{L})/iu.test(piece)
}

const degrees =
  /\(?\s*(?:at|@|à|a|bei|mit|ca\.?|about)?\s*\d+(?:[.,]\d+)?(?:\s*(?:-|–|to|bis|à)\s*\d+)?\s*°\s*[CF]?(?!\p{L})\s*\)?/giu

/** A line without the temperature that stands at its ingredient: "Water (30 °C) 350 g". */
export function withoutDegrees(text: string): string {
  return text.replace(degrees, ' ').trim()
}

/** What is left of "(80 % hydration)" once its number was read. */
const emptyHydration =
  /\(\s*(?:at |of |with )?(?:hydr\p{L}*\.?|idrat\p{L}*)\s*:?\s*(?:at |of )?\s*%?\s*\)/giu

const about =
  /(?<!\p{L})(?:about|approx\.?|approximately|circa|ca\.?|env\.?|environ|etwa|ungefähr|roughly|weigh(?:t|ing)?:?|amount:?)(?!\p{L})/giu
const counted = new RegExp(String.raw`^[\d\s¼-¾⅐-⅞/.,]*${spoons.source}\.?\s*`, 'iu')
const countedBehind = new RegExp(String.raw`\s[\d¼-¾/.,]+${spoons.source}\s*$`, 'iu')
const article = /^(?:(?:of|de|di|of the|von)\s+|d['’]\s*)/iu
const edges = /^[\s:;,=./|~+&()\p{Pd}]+(?<!\()|[\s:;,=./|~+&\p{Pd}]+$/gu

/** The name of an ingredient: what is left of its line without the amount and what belongs to it. */
export function nameIn(text: string): string {
  const bare = text
    .replace(percentOfFlour, ' ')
    .replace(
      /%?\s*(?:of|der|vom|de la|du poids de|sulla|della)\s+(?:total\s+)?(?:flour|mehlmenge|farine|farina)(?!\p{L})/iu,
      ' ',
    )
    .replace(/\([^)]*%[^)]*\)|\(\s*[.,;:=]*\s*\)/gu, ' ')
    .replace(emptyHydration, ' ')
    .replace(about, ' ')
    .replace(edges, '')
    .replace(counted, ' ')
    .replace(countedBehind, '')
    .replace(edges, '')
    .trim()
  return bare.replace(article, '').replace(/\s+/gu, ' ').replace(edges, '').trim()
}
