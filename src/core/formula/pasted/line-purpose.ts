import { isPreferment, knownKindOfName } from '@/core/formula/kind-of-name.ts'
import { withoutDegrees } from './name-in-line.ts'
import { percentAmount, readAmount, statedAmounts } from './stated-amount.ts'
import { wholeAmount } from './whole-amount.ts'

/** Why a line is set aside: it says nothing of what goes into the dough. */
export type AsideReason =
  | 'title'
  | 'method'
  | 'bake'
  | 'time'
  | 'yield'
  | 'servings'
  | 'dusting'
  | 'topping'
  | 'heading'
  | 'checked'
  | 'ruling'

/** What a line that is no ingredient says of the whole, to be held against the lines. */
export type Stated =
  | { of: 'dough' | 'flour' | 'water'; grams: number | null; percent: number | null }
  | { of: 'hydration'; percent: number }
  | { of: 'prefermented'; percent: number }
  | { of: 'pieces'; pieces: number; grams: number }

export type LinePurpose =
  | { is: 'stated'; stated: Stated | null; why: AsideReason }
  | { is: 'aside'; why: AsideReason }
  | { is: 'ingredients' }

const ruling = /^[\s|:+=_*\p{Pd}.~]+$/u
const total =
  /^(?:the\s|le\s|il\s)?(?:grand\s|sub)?(?:total(?:e)?|sum(?:me)?|gesamt\p{L}*|insgesamt|zusammen|somme|somma|in all|altogether|all together|en tout|in tutto)(?!\p{L})/iu
const wholeDough =
  /^(?:teiggewicht|teigmenge|teig (?:gesamt|total)|dough (?:weight|total|mass)|weight of (?:the )?dough|poids (?:de (?:la )?pâte|total)|pâte totale|peso (?:totale|(?:dell['’])?impasto)|impasto totale|batch (?:weight|size))(?!\p{L})/iu
const wholeFlour =
  /^(?:total(?: of)? flours?|flours? total|all flour|mehl (?:gesamt|total)|gesamtmehl\p{L}*|mehlmenge|farine totale|total farines?|farina totale|totale farin[ae])(?!\p{L})/iu
const wholeWater =
  /^(?:total water|water total|all water|wasser (?:gesamt|total)|gesamtwasser\p{L}*|eau totale|total eau|acqua totale|totale acqua)(?!\p{L})/iu
const hydration =
  /^(?:total |overall |final |dough |target )?(?:hydration|hydr\.?|hydratation|hydratisierung|hydratation totale|idratazione|tasso d[i'’]\s?(?:idratazione|hydratation)|taux d['’]hydratation|teigausbeute|ta)(?![\p{L}])/iu
const prefermented =
  /^(?:pre-?fermented flour|pff|flour (?:pre-?fermented|in (?:the )?(?:levain|starter|preferment|poolish))|versäuertes mehl|versäuerungsgrad|anteil (?:vorteig|sauerteig)mehl|farine (?:pré)?fermentée|farina prefermentata)(?!\p{L})/iu
const yields =
  /^(?:\(?\s*)(?:makes?|yields?|serves?|servings?|for \d|enough for|ergibt|ergebnis|für (?:ca\.? )?\d|reicht für|portionen|stückzahl|anzahl|donne|pour (?:environ )?\d|rendement|resa|per \d|dosi per|porzioni|portions?|divide|scale (?:at|into|to)|teilen|abwiegen|abstechen|diviser|division|peser|pesage|dividere|pezzatura|spezzare|spezzatura|stückgewicht|teigeinlage|einlage|teiglinge? (?:zu|à)|(?:piece|ball|loaf|unit|dough ball) (?:weight|mass)|poids (?:des? |d['’]un )?(?:pâtons?|pièces?)|peso (?:dei |del )?(?:panett[oi]|pezzo|pagnotta))(?!\p{L})/iu
const pieceWords =
  '(?:dough )?(?:balls?|pieces?|loaves|loaf|rolls?|buns?|baguettes?|bases?|portions?|pizzas?|teiglinge?n?|brote?|brötchen|stück|stk\\.?|kugeln?|weggen|zöpfe?|pâtons?|pains?|boules?|pièces?|panett[oi]|pagnott[ae]|pezz[io]|palline|filoni)'
const counts = new RegExp(
  String.raw`^(?:ca\.? |about |environ |circa )?(\d+)\s*(?:x|×)?\s*(?:\p{L}+\s)?${pieceWords}(?!\p{L})`,
  'iu',
)
const dusting =
  /(?<!\p{L})(?:for|to) (?:the )?(?:dust|bench|peel|basket|banneton|bowl|tin|pan|tray|board|work ?top|work ?surface|greas|brush|sprinkl|roll(?:ing)?(?: out)?|shap|proof|coat|flour(?:ing)?|oil(?:ing)?|handl|glaz|top|finish|garnish|serv)\p{L}*|(?<!\p{L})(?:dusting|bench) (?:flour|rice)|extra flour|zum (?:be)?(?:stäuben|streuen|streichen|arbeiten|ausrollen|einfetten|wenden|wälzen|aufarbeiten|bemehlen|einölen|garnieren|bepinseln)|für (?:das |die |den )?(?:gärkörb\p{L}*|arbeitsfläche|form|blech|schieber|aufarbeitung|garnitur|tischfläche|körbchen|schüssel)|streumehl|staubmehl|pour (?:le |la |les )?(?:fariner|fleurer|fleurage|plan|façonnage|saupoudrer|dorure|dorer|moule|banneton|graisser|huiler|travail|finition|tour)|fleurage|per (?:lo |la |il |l['’])?(?:spolver\p{L}*|infarinare|spennellare|ungere|teglia|piano|decorare|stampo|stesura|cestino|finire|guarnire)|spolvero|egg ?wash/iu
const hours =
  /\d\s*(?:min(?:ute)?[ns]?|mins|h|hrs?|hours?|std\.?|stunden?|heures?|ore|ora|sec(?:ond)?s?|sek(?:unden)?|days?|tage?|jours?|giorn[io])(?![\p{L}])/iu
const bakes =
  /(?<!\p{L})(?:bake|baking|oven|preheat|backen|ofen|backofen|vorheizen|cuire|cuisson|four|enfourner|préchauffer|cuocere|cottura|forno|infornare)(?!\p{L})|\d\s*°/iu
const verbs =
  /^(?:mix|knead|add|let|rest|fold|divide|shape|stir|dissolve|combine|put|cover|leave|proof|prove|roll|place|turn|pour|ferment|bulk|autolyse|remove|cool|score|slash|stretch|whisk|work|repeat|when|then|after|feed|sprinkle|heat|chill|refrigerate|pre-?shape|final proof|bulk ferment\p{L}*|den|die|das|alle(?:s)?|mischen|kneten|dehnen|teigruhe|stockgare|stückgare|gare|knetzeit|ruhen|mélanger|pétrir|ajouter|laisser|façonner|verser|couvrir|pointage|apprêt|rabat|impastare|mescolare|aggiungere|lasciare|formare|unire|coprire|sciogliere|puntata|appretto|lievitazione|riposo)(?!\p{L})/iu
const bareTitle =
  /(?:bread|loaf|dough|focaccia|pizza|brot|brötchen|teig|zopf|pain|pane|panini|baguette|ciabatta|brioche|recipe|formula|rezept|recette|ricetta|buns?|rolls?|weggli|tresse|fougasse|grissini|flatbread|bagels?|semmel|stollen|test|trial|versuch|essai|prova)/iu
const vague =
  /(?:to taste|as needed|a little|some|q\.?\s?b\.?|etwas|nach geschmack|un peu|un po|une pincée|quanto basta|enough)/iu

/** What a line of a pasted text is for, before its ingredients are looked for. */
export function purposeOf(line: string, place: { first: boolean; others: number }): LinePurpose {
  const text = line.trim()
  if (ruling.test(text)) return { is: 'aside', why: 'ruling' }
  const stated = statedIn(text)
  if (stated) return stated
  if (yields.test(text) || isCount(text)) {
    const made = piecesIn(text) ?? doughIn(text)
    return { is: 'stated', stated: made, why: made ? 'yield' : 'servings' }
  }
  if (dusting.test(text)) return { is: 'aside', why: 'dusting' }
  return talkIn(text, place)
}

function statedIn(text: string): LinePurpose | null {
  const made = (stated: Stated): LinePurpose => ({ is: 'stated', stated, why: 'checked' })
  const amounts = amountsIn(text)
  if (wholeFlour.test(text)) return made({ of: 'flour', ...amounts })
  if (wholeWater.test(text)) return made({ of: 'water', ...amounts })
  if (hydration.test(text)) {
    const number = /\d+(?:[.,]\d+)?/u.exec(text)?.[0] ?? ''
    const read = readAmount(number)
    if (!read.ok) return null
    const yieldOfDough = /^(?:ta|teigausbeute)(?!\p{L})/iu.test(text)
    return made({ of: 'hydration', percent: yieldOfDough ? read.grams - 100 : read.grams })
  }
  if (prefermented.test(text) && amounts.percent !== null)
    return made({ of: 'prefermented', percent: amounts.percent })
  if (isPreferment(text.replace(/\d.*$/u, ''))) return null
  return total.test(text) || wholeDough.test(text) ? made({ of: 'dough', ...amounts }) : null
}

function amountsIn(text: string): { grams: number | null; percent: number | null } {
  const mass = wholeAmount(text)
  const percent = percentAmount.exec(text)?.[1]
  const read = percent === undefined ? null : readAmount(percent)
  return { grams: mass?.ok ? mass.grams : null, percent: read?.ok ? read.grams : null }
}

function isCount(text: string): boolean {
  const found = counts.exec(text)
  return found !== null && knownKindOfName(text.slice(found[0].length)) === null
}

function piecesIn(text: string): Stated | null {
  const [mass] = statedAmounts(text)
  if (!mass) return null
  const times = mass.times === null ? null : readAmount(mass.times)
  const one = wholeAmount(text.slice(mass.from, mass.to).replace(/^.*[x×*]\s*/iu, ''))
  if (!one?.ok) return null
  if (times?.ok) return { of: 'pieces', pieces: times.grams, grams: one.grams }
  const count = /(?<![\p{L}\d.,])(\d{1,3})(?=\s)(?!\s*[\d.,])/u.exec(text.slice(0, mass.from))?.[1]
  return count === undefined ? null : { of: 'pieces', pieces: Number(count), grams: one.grams }
}

const madeOfDough =
  /(?<!\p{L})(?:dough|teig|pâte|impasto)(?:\s+(?:in all|in total|altogether))?\s*[.)]?\s*$/iu
const madeInAll =
  /^\(?\s*(?:makes?|yields?|ergibt|ergebnis|donne|rendement|resa)\s*:?\s*(?:about |approx\.? |ca\.? |circa |etwa |environ )?[\d.,]+\s*k?g\s*[.)]?\s*$/iu

/** "Makes 1.9 kg of dough": the whole, where no piece is named, whose weight may be that of the baked bread. */
function doughIn(text: string): Stated | null {
  const { grams } = amountsIn(text)
  const tells = madeOfDough.test(text) || madeInAll.test(text)
  return grams !== null && tells ? { of: 'dough', grams, percent: null } : null
}

/** Sentences of the method, times, oven words and titles; all else is looked at for ingredients. */
function talkIn(text: string, { first, others }: { first: boolean; others: number }): LinePurpose {
  const cool = withoutDegrees(text)
  const measured = statedAmounts(cool).length > 0 || percentAmount.test(cool)
  if (measured) return { is: 'ingredients' }
  const words = text.split(/\s+/u).length
  if (bakes.test(text) && (hours.test(text) || /\d\s*°/u.test(text)))
    return { is: 'aside', why: 'bake' }
  const known = knownKindOfName(text.split(/[,.:;]/u)[0] ?? '')
  if (verbs.test(text) && words > 2) return { is: 'aside', why: 'method' }
  if (hours.test(text) && (known === null || words > 3)) return { is: 'aside', why: 'time' }
  if (vague.test(text)) return { is: 'ingredients' }
  const numbered = /\d/u.test(text.replace(/^#+/u, ''))
  if (first && others > 0 && !numbered && (known === null || bareTitle.test(text) || words > 3))
    return { is: 'aside', why: 'title' }
  if (words > 9) return { is: 'aside', why: 'method' }
  return { is: 'ingredients' }
}
