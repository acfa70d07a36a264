import type { IngredientKind } from './formula-record.ts'

/** A word of its own, from the list. */
const word = (list: string) => new RegExp(String.raw`(?<!\p{L})(?:${list})(?!\p{L})`, 'iu')
/** A part of a word: German writes compounds in one. */
const part = (list: string) => new RegExp(`(?:${list})`, 'iu')

/** What looks like another kind by one of its words and is none: dried milk, sugar, malt, seeds, fruit, nuts, spices. */
const others: readonly RegExp[] = [
  part(
    'dry milk|milk powder|(?:dried|powdered) milk|milk, (?:dried|dry|powdered)|milchpulver|magermilchpulver|lait en poudre|poudre de lait|latte in polvere|buttermilk powder',
  ),
  part(
    'baking ?(?:powder|soda)|backpulver|natron|bicarbonat|levure chimique|poudre à lever|lievito (?:per dolci|chimico|istantaneo per)|hirschhorn|nutritional yeast|hefeflocken|yeast extract',
  ),
  part(
    'sugar|zucker|sucre|zucchero|honey|honig|(?<!\\p{L})miel(?:e)?(?!\\p{L})|syrup|sirup|sirop|sciroppo|molasses|melasse|treacle',
  ),
  part('malt(?!ose)|malz|(?<!\\p{L})orzo(?!\\p{L})'),
  part(
    'cocoa|kakao|cacao|chocolat|schokolade|cioccolat|vanill|cinnamon|zimt|cannelle|cannella|ascorbic|ascorbin|lecithin|vitamin c',
  ),
  part(
    'gluten|starch|stärke|amidon|amido|wheat germ|keimling|bran(?![\\p{L}])|kleie|crusca|(?<!\\p{L})son(?!\\p{L})|flakes|flocken|flocons|fiocchi|rolled oats|(?<!\\p{L})oats(?!\\p{L})|porridge|psyllium|flohsamen',
  ),
  part(
    'seeds?(?!\\p{L})|samen|saaten|(?:sonnenblumen|kürbis)?kerne|graines?|semi(?: di)? |sesam|sesame|sésame|linseed|flax|leinsa|poppy|mohn|pavot|papavero|caraway|kümmel|cumin|fennel|fenchel|fenouil|finocchi|anis|coriander|koriander|coriandre|coriandolo|cardamom|kardamom',
  ),
  part(
    'nuts?(?!\\p{L})|nüsse|nuss|noix|noisette|noci(?!\\p{L})|nocciol|almond|mandel|amande|mandorl|pistach|pinienkern|pinoli',
  ),
  part(
    'raisin|rosine|sultan|uvetta|currant|cranberr|fig(?:s|ue|hi)?(?!\\p{L})|feige|date(?:s|n)?(?!\\p{L})|dattel|apple|apfel|pomme|mela(?!\\p{L})|orange|arancia|lemon|zitrone|citron|limone|zest|peel|schale|scorza',
  ),
  part(
    'potato|kartoffel|patat|onion|zwiebel|oignon|cipoll|garlic|knoblauch|(?<!\\p{L})ail(?!\\p{L})|aglio|olive[ns]?(?! ?(?:oil|öl))(?!nöl)(?!\\p{L}| oil)|tomat|pomodor|pumpkin|kürbis|courge|zucca|carrot|karotte|rüebli|carotte|carota|spinach|spinat|épinard|spinaci',
  ),
  part(
    'cheese|käse|fromage|formaggio|parmesan|parmigiano|pecorino|bacon|speck|lardons|pancetta|ham(?!\\p{L})|schinken|jambon|prosciutto|salami|ciccioli',
  ),
  part(
    'rosemary|rosmarin|romarin|rosmarino|thyme|thymian|thym(?!\\p{L})|timo|oregano|origan|basil|herbs?(?!\\p{L})|kräuter|herbes|erbe(?!\\p{L})|pepper|pfeffer|poivre|pepe(?!\\p{L})|spices?|gewürz|épices|spezie|paprika|chil[il]i?|turmeric|kurkuma|curcuma|saffron|safran|zafferano',
  ),
  part('peanut butter|coconut|kokos|breadcrumbs?|altbrot|restbrot|old bread|soaker'),
]

const clues: readonly [IngredientKind, RegExp][] = [
  ['yeast', /yeast|levure|(?<!\p{L})hefe|(?:back|bier|frisch|trocken|bäcker)hefe|lievito/iu],
  ['salt', /(?<!\p{L})(?:salt|sale|sel)(?!\p{L})|salz/iu],
  [
    'fat',
    /(?<!\p{L})(?:oil|huile|olio|beurre|burro|lard|saindoux|strutto|margarina?e?|shortening|ghee)(?!\p{L})|olivenöl|rapsöl|öl(?!\p{L})|(?<!\p{L})oel|butter(?!milk|milch)|schmalz|margarine/iu,
  ],
  [
    'liquid',
    /milk|milch|(?<!\p{L})lait(?!\p{L})|latte(?!\p{L})|babeurre|latticello|cream|crème|panna(?!\p{L})|sahne|rahm|yogh?urt|joghurt|jogurt|yaourt|quark|skyr|whey|molke|petit-lait|siero|(?<!\p{L})(?:eggs?|eier|ei|eigelbe?|eiweiss|eiweiß|[œo]e?ufs?|uov[oa]|tuorl[oi]|albumi)(?!\p{L})|yolk|juice|saft|(?<!\p{L})jus(?!\p{L})|succo|beer|(?<!\p{L})bier(?!\p{L})|bière|birra|wine|wein|(?<!\p{L})vin(?!\p{L})|vino|kefir|cider/iu,
  ],
  [
    'water',
    /(?<!\p{L})(?:water|acqua|eau|ice|eis|eiswürfel|glaçons?|ghiaccio)(?!\p{L})|wasser|(?<!\p{L})(?:bassinage|schüttwasser)(?!\p{L})/iu,
  ],
  [
    'flour',
    /flour|farina|farine|mehl|semol[ae]|semolina|semoule|grie(?:ss|ß)|schrot|whole ?wheat|wholemeal|wholegrain|whole[- ]grain|vollkorn|integrale|intégrale|manitoba|(?<!\p{L})(?:atta|maida|gruau)(?!\p{L})|(?<!\p{L})(?:rye|spelt|einkorn|durum|emmer|kamut|khorasan|seigle|épeautre|segale|farro|roggen|dinkel|weizen|hartweizen)(?!\p{L})|strong (?:white|brown)|(?:plain|extra strong|very strong|canadian|soft|light|brown) (?:white|strong)|all[- ]purpose|(?<!\p{L})(?:AP|00|0|strong|plain)(?!\p{L})$|type ?0|tipo ?\d|(?<!\p{L})(?:t|type ?)(?:45|55|65|80|110|130|150|170)(?!\d)/iu,
  ],
]

const doughUsesAsOther = word('dough conditioner|improver|backmittel|améliorant|miglioratore')

/**
 * The kind that words in one of four languages tell of; null where none is known. Known others (sugar, malt, seeds, fruit,
 * cheese, spices) come first, since their names borrow words from the rest: dried milk, coconut oil stays a fat by its last word.
 */
export function kindOfWords(text: string): IngredientKind | null {
  const fatOfOther = /(?:oil|öl|huile|olio)(?!\p{L})/iu.test(text)
  if (!fatOfOther && isKnownOther(text)) return 'other'
  return clues.find(([, clue]) => clue.test(text))?.[0] ?? null
}

/** Whether a name is one of the known ingredients that count neither as flour, water, salt, yeast nor fat. */
function isKnownOther(text: string): boolean {
  return doughUsesAsOther.test(text) || others.some((other) => other.test(text))
}
