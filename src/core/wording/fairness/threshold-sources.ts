import type { FairnessCode } from '@/core/fairness/fairness-data.ts'

const thermometer =
  'A kitchen thermometer is good to 0.5 to 1 °C; smaller differences cannot be seen.'
const mass = 'A scale keeps pieces within 2 %; at 5 % a piece bakes and looks different.'
const strength =
  'Salt and yeast act by their share of the water; a tenth apart is tasted or seen in the rise.'
const order =
  'Computed: a correlation r with the order widens every interval by 1/√(1 − r²), 5 % at 0.3 and 40 % at 0.7.'
const tolerance = 'Proofs are kept to ± 5 %, so levels may differ by twice that.'
const age = 'Ages after the oven are kept to ± 30 s for hot pieces.'
const counted = 'Each one is said.'
const evidence =
  'Computed from the design: the difference that would show, against the margin; four times the margin is this notebook’s limit.'
const blind = 'Who knows the codes, or hears the others, does not judge the piece alone.'

/** Where the sizes from which an item is to be known or fixed come from. */
export const thresholdSources: Readonly<Record<FairnessCode, string>> = {
  'water-temperature': thermometer,
  'water-past-limits': 'Packets and trade habit; the packet has the last word.',
  'piece-mass': mass,
  'flour-per-piece': 'The price of equal pieces: worth knowing, not mending.',
  'salt-in-water': strength,
  'yeast-in-water': strength,
  'water-rides': 'Two points of water are a level of their own in many trials.',
  'choice-water': 'A question of what is asked, not a mistake.',
  'starter-corrected': 'The weights already carry the correction.',
  'starter-age': 'A ripe starter holds its peak for an hour or two.',
  'stock-age': 'Yeast in plain water weakens within the hour.',
  ripeness:
    'How far the levels’ strength differs, lowest against highest, where the clock ends a proof.',
  'bake-ends':
    'Where the clock ends the bake: how far the levels lie apart, in percent, of bake temperatures in °C. Bakers’ pages end lean breads at 93 to 98 °C of core.',
  'oven-change':
    'Oven air takes 10 to 20 min to a new setting, a stone 20 to 40 up and 30 to 60 down.',
  'fold-strength': 'Both ways are in use; each has its own rider.',
  'flour-water':
    'Wholemeal takes 0.5 to 2 points of water more for each tenth of the flour: bakers’ pages disagree.',
  'rest-in-mix': thermometer,
  'second-water': 'Water held back is weighed apart; its temperature moves the dough’s.',
  'stock-stages': 'Yeast in plain water weakens within the hour.',
  'steps-differ': 'Rests are kept to ± 2 min.',
  doughs: 'Both ways are in use; each has its own riders.',
  'dough-order': order,
  'bake-order': order,
  'mouth-order': order,
  load: order,
  'oven-place': order,
  'piece-before': 'The piece before cools the floor and stays in the mouth.',
  'age-at-baking': tolerance,
  'oven-to-mouth': age,
  'age-at-tasting': 'Crust and crumb change over hours: a third older is another loaf.',
  'levels-blur':
    'Levels are kept apart when their blur is at most a quarter of the gap, barely up to a half: a convention of this notebook.',
  'no-scale': 'Without a scale nothing is known of the weights.',
  'coarse-dose':
    'Relative standard uncertainty of one tared reading, d/√6 (GUM); 5 % is this notebook’s limit.',
  'bench-flour': '5 g of bench flour in a piece, against the smallest gap between levels.',
  'mixer-size': 'The least and most dough that the baker has entered for the mixer.',
  'several-hands': 'Two people knead and shape differently.',
  'key-keeper': blind,
  'knowing-tasters': blind,
  'tasters-talk': blind,
  'many-samples': 'Four to six samples a sitting.',
  'one-session': 'What got the level once has no error to be judged by (Hurlbert 1984).',
  'few-tasters': evidence,
  'few-sessions': evidence,
  'no-expectation': 'Written down before the mix or not at all.',
  'no-main-response': 'With several answers one can always be found that pleases.',
  'no-margin': 'Without it nothing can be too small to matter.',
  'no-control': 'An oven or flour that is new is judged against what is known.',
  'flour-lots': 'Bags of one flour differ in the water they take.',
  'levels-wide': 'Span of the levels against the whole usual range over all styles.',
  'outside-usual': 'Published ranges by style disagree; they are hints.',
  'serving-rule': 'The same cut, topping and temperature for all; 2 stands for a method that tops.',
  'baker-scores': 'Who mixed it knows which it is.',
  'no-warm-up': 'The first piece meets a floor and a mouth that no other meets.',
  'dough-warmth': thermometer,
  'piece-warmth': thermometer,
  'levels-handled': 'How far a level moved, against the smallest gap between levels.',
  'ferment-hours': tolerance,
  'age-baked': tolerance,
  'mouth-minutes': age,
  'age-tasted': 'Crust and crumb change over hours: a third older is another loaf.',
  'oven-floor': 'Ovens cycle by 10 °C and more.',
  'piece-before-done': 'The piece before cools the floor and stays in the mouth.',
  'failures-by-level': 'Pieces that never reach a mouth are not lost by chance.',
  practice: 'Hands get better over the day.',
  'folds-done': 'Each fold builds strength.',
  departed: counted,
  'tasters-missing': counted,
  'cut-warm':
    'Share of the planned cooling that was left out; hot crumb smears and smells stronger.',
  peeks: blind,
  'early-looks': 'Who looks early may stop when the answer pleases.',
  'added-sessions': 'Who adds a session after a look may go on until the answer pleases.',
  'closed-early': counted,
}

/** The same, saying where nothing but common practice stands behind them. */
export function thresholdSourceText(code: FairnessCode, practice: boolean, mark = ''): string {
  const source = thresholdSources[code]
  return practice ? `${source} ${mark}Common practice.${mark}` : source
}
