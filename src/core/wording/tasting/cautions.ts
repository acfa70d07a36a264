/** A caution that stands in the report and before a first bake or tasting. */
export interface Caution {
  topic: 'raw-dough' | 'allergens' | 'hot-oven' | 'carbon-monoxide' | 'chilled-food' | 'dark-crust'
  title: string
  text: string
}

/**
 * What anyone who repeats or hosts the trial should know. They defer to local food-safety rules and to the instructions
 * of the equipment, and are shown whole: none is left out because a trial seems harmless.
 * Sources: allergen list of Regulation (EU) 1169/2011 Annex II and the nine US major allergens (with sesame since
 * 2023), US safety notice on charcoal indoors (CPSC 99-051), chilling within two hours, recital 3 of Regulation (EU)
 * 2017/2158 on acrylamide: all seen through summaries; handling of hot ovens: common practice.
 */
export const cautions: readonly Caution[] = [
  {
    topic: 'raw-dough',
    title: 'Raw flour and dough',
    text: 'Do not taste raw flour, dough, batter or starter: flour is a raw food and can carry germs that only baking removes. Wash hands, tools and surfaces, and keep raw dough apart from food that is ready to eat.',
  },
  {
    topic: 'allergens',
    title: 'Allergens',
    text: 'Ask every taster before serving; a blind tasting must never hide an allergen. Wheat and other cereals with gluten are in nearly every dough. The fourteen groups named in the EU: cereals with gluten, crustaceans, eggs, fish, peanuts, soybeans, milk, nuts, celery, mustard, sesame, sulphites above 10 mg/kg, lupin, molluscs. The nine named in the US: milk, eggs, fish, crustacean shellfish, tree nuts, wheat, peanuts, soybeans, sesame.',
  },
  {
    topic: 'hot-oven',
    title: 'Hot ovens',
    text: 'Steel, stone and steam burn at once. Use dry gloves, keep children and clothing away, mind flare-ups of dusting flour or oil, and let everything cool before touching or moving it.',
  },
  {
    topic: 'carbon-monoxide',
    title: 'Carbon monoxide',
    text: 'Never run charcoal, wood or gas ovens made for outdoors inside a house, tent or garage, not even with a door open: carbon monoxide has no smell. Have an alarm where anything burns.',
  },
  {
    topic: 'chilled-food',
    title: 'Chilled food',
    text: 'Lean yeasted dough ferments warm by design. Toppings, fillings and doughs rich in egg or milk belong in the refrigerator, at 4 to 5 °C or colder, within two hours.',
  },
  {
    topic: 'dark-crust',
    title: 'Dark crust',
    text: 'Acrylamide forms in dry crust at high heat. Aim for golden rather than charred, also when darkness is what the trial is about.',
  },
]

export const cautionsDefer =
  'Local food-safety rules and the instructions of your equipment come before anything written here. Feeding the public has rules of its own: ask the local authority.'

/** The same in one paragraph, for where all of it stands further on. */
export const cautionsInShort =
  'Do not taste raw flour, dough, batter or starter. Ask every taster about allergens before serving: wheat and other cereals with gluten are in nearly every dough. Steel, stone and steam burn at once. Never burn charcoal, wood or gas inside: carbon monoxide has no smell. Toppings, fillings and doughs rich in egg or milk belong in the refrigerator within two hours. Golden rather than charred. Local food-safety rules and the instructions of your equipment come before anything written here.'
