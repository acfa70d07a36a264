import type { Formula } from './formula-record.ts'

/** The fourteen groups of Regulation (EU) 1169/2011, Annex II, in its order. */
export const allergenGroups = [
  'cereals with gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soybeans',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const

export type AllergenGroup = (typeof allergenGroups)[number]

/** Words in an ingredient's name that speak of a group: common kitchen words, no list of the law. */
const words: Record<AllergenGroup, RegExp> = {
  'cereals with gluten':
    /\b(wheat|rye|barley|oats?|spelt|emmer|einkorn|kamut|durum|semolina|malt)/i,
  crustaceans: /\b(shrimps?|prawns?|crabs?|lobster)/i,
  eggs: /\beggs?\b|\byolks?\b|mayonnaise/i,
  fish: /\b(fish|anchov|tuna|salmon|sardine)/i,
  peanuts: /\bpeanut|groundnut/i,
  soybeans: /\bsoy|tofu|miso\b/i,
  milk: /\b(milk|butter|buttermilk|cream|cheese|mozzarella|parmesan|yogh?urt|whey|ricotta|kefir|quark)/i,
  nuts: /\b(almond|hazelnut|walnut|pecan|cashew|pistachio|macadamia|brazil nut|nuts?\b)/i,
  celery: /\bceler/i,
  mustard: /\bmustard/i,
  sesame: /\b(sesame|tahini)/i,
  sulphites: /\b(sulphite|sulfite|wine|dried apricots?|raisins?|sultanas?)/i,
  lupin: /\blupin/i,
  molluscs: /\b(mussels?|clams?|squid|octopus|oysters?)/i,
}

/**
 * The allergen groups that an ingredient of the formula names: cereals with gluten always where there is flour, the others by
 * the words of the names. It can overlook what a name does not say, so everybody is asked all the same.
 */
export function allergensOf({ ingredients }: Pick<Formula, 'ingredients'>): AllergenGroup[] {
  const names = ingredients.map(({ name }) => name)
  return allergenGroups.filter(
    (group) =>
      (group === 'cereals with gluten' && ingredients.some(({ kind }) => kind === 'flour')) ||
      names.some((name) => words[group].test(name)),
  )
}
