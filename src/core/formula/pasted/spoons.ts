const english =
  'cups?|tbsp\\.?|tbs\\.?|tablespoons?|tsp\\.?|teaspoons?|pinch(?:es)?|dash(?:es)?|handfuls?|sachets?|packets?|sticks?|splash(?:es)?|glugs?|cubes?|blocks?|fl\\.? ?oz\\.?|fluid ounces?|pints?|quarts?'
const german =
  'EL|TL|Essl(?:ö|oe)ffel|Teel(?:ö|oe)ffel|Msp\\.?|Messerspitzen?|Prisen?|Tassen?|Becher|P(?:ä|ae)ckchen|P(?:ä|ae)ck(?:li)?|Pck\\.?|Pkg\\.?|W(?:ü|ue)rfel|Handvoll|Schuss'
const french =
  'cuill(?:è|e)res?|c\\. ?(?:à|a) ?(?:s|c|soupe|café)\\.?|c(?:à|a)[sc]|cs|pinc(?:é|e)es?|tasses?|verres?|poign(?:é|e)es?|filets?'
const italian =
  'cucchiai(?:o|ni|no)?|pizzic(?:o|hi)|bustin[ae]|tazz[ae]|tazzin[ae]|bicchier[ei]|cubett[oi]|manciat[ae]'

/** Measures that weigh differently in every kitchen, standing as a word of their own, in four languages. */
export const spoons = new RegExp(
  `(?:^|[\\s\\d(\u00bc-\u00be\u2150-\u215e])(?:${english}|${german}|${french}|${italian})(?![\\p{L}])`,
  'iu',
)

/** A block of fresh yeast as shops sell it: 42 g in German, Swiss and French ones, 25 g in Italian ones (common practice). */
export const yeastBlocks: readonly [RegExp, number][] = [
  [/(?:würfel|wuerfel|cubes?)/iu, 42],
  [/cubett[oi]/iu, 25],
]
