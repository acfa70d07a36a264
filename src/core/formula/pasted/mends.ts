import type { LineTrouble } from './line-trouble.ts'
import { spoons, yeastBlocks } from './spoons.ts'
import { readAmount } from './stated-amount.ts'

/** Shelled weights of a hen's egg and its parts, g (common practice, from memory: a medium to large one). */
const eggs: readonly [RegExp, number, string][] = [
  [/yolks?|eigelbe?|jaunes? d['’][œo]e?ufs?|tuorl[oi]/iu, 18, ''],
  [/egg whites?|eiweiss|eiweiß|blancs? d['’][œo]e?ufs?|album[ei]/iu, 33, ''],
  [/eggs?|eier|(?<!\p{L})ei(?!\p{L})|[œo]e?ufs?|uov[oa]/iu, 50, ''],
]
/** A millilitre of vegetable oil, g (0.91 to 0.92, common practice). */
const oilGrams = 0.92
const oil = /(?<!\p{L})(?:oil|huile|olio)|öl(?!\p{L})/iu
const count = /(?<![\p{L}\d.,/])((?:\d+\s+)?\d+\s*[/⁄]\s*\d+|\d*\s*[¼-¾]|\d+(?:[.,]\d+)?)/u
const oneByWord = /^(?:an?|one|ein(?:e|en)?|une?|un['’]?|uno)\s/iu

/**
 * What may stand in place of a line that was not understood, as whole lines to choose from: never taken by themselves.
 */
export function mendsOf(text: string, why: LineTrouble): string[] {
  if (why === 'two-readings') return twoReadings(text)
  if (why === 'range') return ends(text)
  if (why === 'one-or-the-other')
    return text.split(/\s(?:or|oder|ou|o|oppure|bzw\.?)\s/iu).map((one) => one.trim())
  if (why === 'if-wanted') return [withoutWish(text)]
  if (why === 'volume-of-no-water') return oilWeighed(text)
  if (why === 'pieces-not-weighed' || why === 'cups-and-spoons' || why === 'no-amount')
    return [...eggsWeighed(text), ...blockWeighed(text), ...inGrams(text, why)]
  return []
}

function twoReadings(text: string): string[] {
  const mark = /([1-9]\d{0,2})[.,](\d{3})(?!\d)/u.exec(text)
  if (mark) {
    const [all, whole = '', rest = ''] = mark
    return [text.replace(all, `${whole}${rest}`), text.replace(all, `${whole}.${rest}`)]
  }
  const gap = /(\d{1,2}) (\d{3})(?!\d)/u.exec(text)
  if (!gap) return []
  const [all, one = '', other = ''] = gap
  return [text.replace(all, `${one}${other}`), text.replace(all, `type ${one} ${other}`)]
}

function ends(text: string): string[] {
  const found =
    /(\d+(?:[.,]\d+)?)\s*(g|kg|ml|l|%|oz|lb)?\s*(?:-|–|—|to|bis|à)\s*(\d+(?:[.,]\d+)?)/iu.exec(text)
  if (!found) return []
  const [all, least = '', , highest = ''] = found
  return [text.replace(all, least), text.replace(all, highest)]
}

const withoutWish = (text: string) =>
  text
    .replace(
      /[,(]?\s*(?:optional|if (?:wanted|liked|using)|nach belieben|wahlweise|facultati[fv]e?|optionnel(?:le)?|facoltativ[oa]|opzionale)\s*\)?/iu,
      '',
    )
    .trim()

function oilWeighed(text: string): string[] {
  if (!oil.test(text)) return []
  const found = /(\d+(?:[.,]\d+)?)\s*(ml|cl|dl|l)(?!\p{L})/iu.exec(text)
  const read = readAmount(found?.[1] ?? '')
  if (!found || !read.ok) return []
  const millilitres =
    read.grams * ({ ml: 1, cl: 10, dl: 100, l: 1000 }[(found[2] ?? 'ml').toLowerCase()] ?? 1)
  return [text.replace(found[0], `${Math.round(millilitres * oilGrams * 10) / 10} g`)]
}

/** A bare number read as grams: "500 flour", "Flour: 500 (100 %)". */
function inGrams(text: string, why: LineTrouble): string[] {
  if (why !== 'pieces-not-weighed' || eggs.some(([name]) => name.test(text))) return []
  const found = /(?<![\p{L}\d.,/])(\d+(?:[.,]\d+)?)(?!\s*%)(?![\d.,/])(?=\s|$)/u.exec(text)
  return found ? [text.replace(found[0], `${found[0]} g`)] : []
}

function eggsWeighed(text: string): string[] {
  const egg = eggs.find(([name]) => name.test(text))
  return egg ? weighed(text, egg[1]) : []
}

function blockWeighed(text: string): string[] {
  if (!/yeast|hefe|levure|lievito/iu.test(text)) return []
  const block = yeastBlocks.find(([name]) => name.test(text))
  if (!block) return []
  const bare = text.replace(spoons, (all) => (block[0].test(all) ? ' ' : all))
  return weighed(/\d|[¼-¾]/u.test(bare) ? bare : `1 ${bare}`, block[1])
}

function weighed(text: string, each: number): string[] {
  const worded = text.replace(oneByWord, '1 ')
  const found = count.exec(worded)
  const read = readAmount(found?.[1] ?? '')
  if (!found || !read.ok || read.grams > 100) return []
  return [
    worded
      .replace(found[0], `${Math.round(read.grams * each * 10) / 10} g `)
      .replace(/\s+/gu, ' ')
      .trim(),
  ]
}
