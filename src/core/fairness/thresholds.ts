import type { FairnessCode } from './fairness-data.ts'
import type { FairnessUnit } from './fairness-item.ts'

export interface Threshold {
  unit: FairnessUnit
  /** From this size on it is to be known, and from this one to be fixed; null: never. */
  know: number | null
  fix: number | null
  /** Where the sizes come from. */
  source: string
  /** True when there is no authority behind it but common practice. */
  practice: boolean
}

const practice = (
  unit: FairnessUnit,
  know: number | null,
  fix: number | null,
  source: string,
): Threshold => ({ unit, know, fix, source, practice: true })

const sourced = (...row: Parameters<typeof practice>): Threshold => ({
  ...practice(...row),
  practice: false,
})

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

/** How large each item must be to be known about or fixed: the one table behind every severity. */
export const thresholds: Readonly<Record<FairnessCode, Threshold>> = {
  'water-temperature': practice('°C', 0.5, 1, thermometer),
  'water-past-limits': practice(
    '°C',
    0.01,
    5,
    'Packets and trade habit; the packet has the last word.',
  ),
  'piece-mass': practice('%', 2, 5, mass),
  'flour-per-piece': practice(
    '%',
    5,
    null,
    'The price of equal pieces: worth knowing, not mending.',
  ),
  'salt-in-water': practice('%', 10, null, strength),
  'yeast-in-water': practice('%', 10, null, strength),
  'water-rides': practice(
    'points',
    0.5,
    2,
    'Two points of water are a level of their own in many trials.',
  ),
  'choice-water': practice('count', 1, null, 'A question of what is asked, not a mistake.'),
  'starter-corrected': practice('points', null, null, 'The weights already carry the correction.'),
  'starter-age': practice('min', 30, 90, 'A ripe starter holds its peak for an hour or two.'),
  'stock-age': practice('min', 20, 60, 'Yeast in plain water weakens within the hour.'),
  ripeness: practice(
    '%',
    5,
    25,
    'How far the levels’ strength differs, lowest against highest, where the clock ends a proof.',
  ),
  'bake-ends': practice(
    '%',
    5,
    40,
    'Where the clock ends the bake: how far the levels lie apart, in percent, of bake temperatures in °C. Bakers’ pages end lean breads at 93 to 98 °C of core.',
  ),
  'oven-change': practice(
    '°C',
    5,
    null,
    'Oven air takes 10 to 20 min to a new setting, a stone 20 to 40 up and 30 to 60 down.',
  ),
  'fold-strength': practice('count', 1, null, 'Both ways are in use; each has its own rider.'),
  'flour-water': practice(
    '%',
    5,
    null,
    'Wholemeal takes 0.5 to 2 points of water more for each tenth of the flour: bakers’ pages disagree.',
  ),
  'stock-stages': practice('count', 1, 1, 'Yeast in plain water weakens within the hour.'),
  'steps-differ': practice('min', 2, 10, 'Rests are kept to ± 2 min.'),
  doughs: practice('count', 1, null, 'Both ways are in use; each has its own riders.'),
  'dough-order': sourced('correlation', 0.3, 0.7, order),
  'bake-order': sourced('correlation', 0.3, 0.7, order),
  'mouth-order': sourced('correlation', 0.3, 0.7, order),
  load: sourced('correlation', 0.3, 0.7, order),
  'oven-place': sourced('correlation', 0.3, 0.7, order),
  'piece-before': practice(
    'count',
    2,
    null,
    'The piece before cools the floor and stays in the mouth.',
  ),
  'age-at-baking': practice('%', 5, 10, tolerance),
  'oven-to-mouth': practice('min', 1, 5, age),
  'age-at-tasting': practice(
    '%',
    10,
    33,
    'Crust and crumb change over hours: a third older is another loaf.',
  ),
  'levels-blur': practice(
    'share',
    0.25,
    0.5,
    'Levels are kept apart when their blur is at most a quarter of the gap, barely up to a half: a convention of this notebook.',
  ),
  'no-scale': practice('count', 1, null, 'Without a scale nothing is known of the weights.'),
  'coarse-dose': sourced(
    '%',
    5,
    10,
    'Relative standard uncertainty of one tared reading, d/√6 (GUM); 5 % is this notebook’s limit.',
  ),
  'bench-flour': practice(
    'share',
    0.25,
    null,
    '5 g of bench flour in a piece, against the smallest gap between levels.',
  ),
  'mixer-size': practice(
    'g',
    1,
    200,
    'The least and most dough that the baker has entered for the mixer.',
  ),
  'several-hands': practice('count', 1, null, 'Two people knead and shape differently.'),
  'key-keeper': practice('count', 1, null, blind),
  'knowing-tasters': practice('share', 0.01, 0.5, blind),
  'tasters-talk': practice('count', 1, 1, blind),
  'many-samples': practice('count', 7, 11, 'Four to six samples a sitting.'),
  'one-session': sourced(
    'count',
    1,
    1,
    'What got the level once has no error to be judged by (Hurlbert 1984).',
  ),
  'few-tasters': practice('times the margin', 1, 4, evidence),
  'few-sessions': practice('times the margin', 1, 4, evidence),
  'no-expectation': practice('count', 1, null, 'Written down before the mix or not at all.'),
  'no-main-response': practice(
    'count',
    1,
    1,
    'With several answers one can always be found that pleases.',
  ),
  'no-margin': practice('count', 1, null, 'Without it nothing can be too small to matter.'),
  'no-control': practice(
    'count',
    1,
    null,
    'An oven or flour that is new is judged against what is known.',
  ),
  'flour-lots': practice('count', 2, 2, 'Bags of one flour differ in the water they take.'),
  'levels-wide': practice(
    '%',
    75,
    null,
    'Span of the levels against the whole usual range over all styles.',
  ),
  'outside-usual': practice(
    'points',
    0.001,
    null,
    'Published ranges by style disagree; they are hints.',
  ),
  'serving-rule': practice(
    'count',
    1,
    2,
    'The same cut, topping and temperature for all; 2 stands for a method that tops.',
  ),
  'baker-scores': practice('count', 1, 1, 'Who mixed it knows which it is.'),
  'no-warm-up': practice(
    'count',
    1,
    null,
    'The first piece meets a floor and a mouth that no other meets.',
  ),
  'dough-warmth': practice('°C', 0.5, 1, thermometer),
  'piece-warmth': practice('°C', 0.5, 1.5, thermometer),
  'levels-handled': practice(
    'share',
    0.25,
    0.5,
    'How far a level moved, against the smallest gap between levels.',
  ),
  'ferment-hours': practice('%', 5, 10, tolerance),
  'age-baked': practice('%', 5, 10, tolerance),
  'mouth-minutes': practice('min', 1, 5, age),
  'age-tasted': practice(
    '%',
    10,
    33,
    'Crust and crumb change over hours: a third older is another loaf.',
  ),
  'oven-floor': practice('°C', 10, 25, 'Ovens cycle by 10 °C and more.'),
  'piece-before-done': practice(
    'count',
    2,
    null,
    'The piece before cools the floor and stays in the mouth.',
  ),
  'failures-by-level': practice(
    '%',
    10,
    25,
    'Pieces that never reach a mouth are not lost by chance.',
  ),
  practice: practice('%', 50, null, 'Hands get better over the day.'),
  'folds-done': practice('count', 1, 1, 'Each fold builds strength.'),
  departed: practice('count', 1, null, counted),
  'tasters-missing': practice('count', 1, null, counted),
  'cut-warm': practice(
    '%',
    10,
    33,
    'Share of the planned cooling that was left out; hot crumb smears and smells stronger.',
  ),
  peeks: practice('count', 1, null, blind),
  'early-looks': practice('count', 1, null, 'Who looks early may stop when the answer pleases.'),
  'added-sessions': practice(
    'count',
    1,
    null,
    'Who adds a session after a look may go on until the answer pleases.',
  ),
  'closed-early': practice('count', 1, null, counted),
}
