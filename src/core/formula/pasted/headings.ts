import { isPreferment } from '@/core/formula/kind-of-name.ts'

/** A part of a pasted formula under a heading of its own. */
export interface Heading {
  kind: 'overall' | 'final' | 'preferment' | 'aside' | 'method'
  name: string
}

const opening =
  "(?:\\d+[.)]\\s*)?(?:for|für|pour|per|zutaten für|ingredients for|ingrédients pour|ingredienti per)?\\s*(?:(?:the|den|die|das|la|le|les|il|lo)\\s+|l['’])?"
const start = (list: string) => new RegExp(`^${opening}(?:${list})(?!\\p{L})`, 'iu')

const overall = start(
  'overall(?: formula| recipe)?|total (?:formula|recipe)|whole (?:formula|dough)|gesamtrezept(?:ur)?|gesamt(?:formel)?|formule (?:totale|globale)|recette (?:totale|globale)|ricetta totale|formula totale|total(?:e)?',
)
const finalDough = start(
  'final (?:dough|mix)|main dough|dough(?: day)?|second dough|bread dough|hauptteig|brotteig|teig|pâte finale|pâte|pétrissage|pétrie|impasto(?: finale| principale)?|secondo impasto|impasto del giorno dopo|ingredients|zutaten|ingrédients|ingredienti|formula|recipe|autolyse|autolisi|mix|rest(?:liche)? zutaten|ausserdem|außerdem|zudem|then add|later',
)
const aside = start(
  'toppings?|filling|garnish|glaze|egg ?wash|to finish|finish(?:ing)?|sauce|streusel|coating|belag|füllung|zum bestreichen|zum bestreuen|garnitur|garniture|finition|dorure|farcitura|condimento|salamoia|brine|decorazione|per la teglia|copertura',
)
const method = start(
  'method|instructions?|directions?|steps|procedure|process|how to|zubereitung|anleitung|herstellung|verarbeitung|méthode|préparation|procédé|déroulé|recette étape|procedimento|preparazione|metodo|esecuzione|notes?|notizen|hinweise|schedule|zeitplan|baking|backen|cuisson|cottura',
)
const stages = /^(?:stage|stufe|step|étape|fase)\s*\d/iu
const prefermentWord =
  /(?:poolish|biga|levain|starter|sauerteig|sauer(?!rahm)|vorteig|sponge|pre-?ferment|prefermento|lievitino|lievito madre|pâte fermentée|pasta di riporto|old dough|tangzhong|yudane|br[üu]hst[üu]ck|quellst[üu]ck|kochst[üu]ck|soaker|scald|anstellgut)/iu

/**
 * The heading that a line without an ingredient's amount is, in one of four languages; null where it is none. `endsOpen`:
 * it ends in a colon, so that a name nobody knows opens a part too.
 */
export function headingOf(text: string, endsOpen: boolean): Heading | null {
  const name = text
    .replace(/[:#*_=]+/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
  if (name === '') return null
  const short = name.split(' ').length <= 7
  if (method.test(name) && (short || endsOpen)) return { kind: 'method', name }
  if (!short) return null
  if (aside.test(name)) return { kind: 'aside', name }
  if (isFinal(name)) return { kind: 'final', name }
  if (prefermentWord.test(name)) return { kind: 'preferment', name: prefermentName(name) }
  if (overall.test(name)) return { kind: 'overall', name }
  if (stages.test(name)) return { kind: 'preferment', name }
  return endsOpen ? { kind: 'final', name } : null
}

function isFinal(name: string): boolean {
  return finalDough.test(name) && !isPreferment(name.replace(finalDough, ' '))
}

/** "For the poolish (12 h at 18 °C)" is called "poolish". */
function prefermentName(name: string): string {
  const bare = name
    .replace(/\([^)]*\)?/gu, ' ')
    .replace(new RegExp(`^${opening}`, 'iu'), '')
    .replace(/[,–—-]\s.*$|\s\d.*$/u, '')
    .replace(/\s+(?:build|the night before|am vorabend|la veille|la sera prima)$/iu, '')
    .trim()
  return bare === '' ? name : bare
}
