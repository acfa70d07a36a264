import type { FairnessCode } from '@/core/fairness/fairness-data.ts'

const warmth =
  'A warmer dough ferments faster, so temperature would be judged along with the factor.'
const order =
  'Ovens, hands and appetites change over the day, and that change would be taken for the factor.'
const ages = 'An older dough is riper, and ripeness would be judged along with the factor.'
const fresh =
  'Freshness is tasted before anything else, so equal ages matter more than equal minutes on the clock.'
const power =
  'Smaller differences may be there without showing; “not settled” would then be the likely answer.'
const before = 'The piece before cools the floor and lingers in the mouth.'

/** Why each item matters, in one sentence. */
export const fairnessWhy: Readonly<Record<FairnessCode, string>> = {
  'water-temperature': warmth,
  'water-past-limits':
    'Yeast is harmed by water far outside what it bears, and then two things change.',
  'piece-mass': 'A heavier piece bakes slower and looks larger, whatever is in it.',
  'flour-per-piece': 'Equal pieces hold unequal flour: that is the price of equal baking.',
  'salt-in-water':
    'Salt slows yeast and tightens gluten by its strength in the water, not by its share of the flour: 2 % of the flour is 3.3 % of the water at 60 % hydration and 2.5 % at 80. Against none, 1 % costs about 3 to 8 % of the gas, 2 % 10 to 20 and 3 % 25 to 35 (from memory; sources disagree).',
  'yeast-in-water': 'Yeast thinned by more water works at another pace.',
  'water-rides': 'The dough gets wetter or drier too, and that alone changes crumb and handling.',
  'choice-water':
    'Flours drink differently: the same water tests the swap as it stands, each at its own water tests the flours at their best.',
  'starter-corrected':
    'More starter pulls the dough towards the starter’s own hydration unless the final mix makes up for it.',
  'starter-age': 'A starter goes on ripening while the doughs are mixed one after another.',
  'stock-age': 'Yeast stirred into water weakens while it waits.',
  ripeness:
    'Doughs ripen at different speeds: ended by the clock ripeness rides along, ended by a mark time does, and ripeness weighs more.',
  'bake-ends':
    'Wetter and heavier pieces bake through later, and a hotter oven sooner: after equal minutes one level is gummy or another dry, and that would be tasted for the factor.',
  'oven-change':
    'A piece that goes in while the oven is still on its way bakes at neither temperature.',
  'fold-strength':
    'After as many folds a wet dough is slacker than a dry one; folded until each passes the same test, the number of folds is a result. A window pane misleads with bran in the dough.',
  'flour-water':
    'Flours drink differently: at one water the share with more bran makes a stiffer dough, and stiffness would be judged along with the flour.',
  'rest-in-mix':
    'Wet flour that stands drifts to the room, and its heat of wetting is spent before the mix ends.',
  'second-water':
    'Water held back is worked into a dough that has taken up the rest: how much, how warm and when must be the same rule at every level.',
  'stock-stages':
    'Yeast in plain water goes on ageing: what the preferment got fresh, the dough would get hours old.',
  'steps-differ': 'Whoever gets more steps gets more time, and time ferments.',
  doughs:
    'One dough divided late cannot differ from itself; doughs mixed apart differ in all that batches differ in, and pieces baked apart meet another oven.',
  'dough-order': order,
  'bake-order': order,
  'mouth-order':
    'The first samples are scored higher and tired mouths lower, and that would be taken for the factor.',
  load: 'Each load meets another oven, and its pieces are another age when tasted.',
  'oven-place': 'Ovens are hotter at the back or on one side.',
  'piece-before': before,
  'age-at-baking':
    'An older dough is riper, and ripeness would be judged along with the factor. Assumed: one pair of hands, no pauses, each dough begun so that its first piece meets a free oven, every piece baked in the drawn order.',
  'oven-to-mouth': fresh,
  'age-at-tasting': fresh,
  'levels-blur':
    'When the weighing error is as large as the step between levels, the levels overlap.',
  'no-scale': 'Without a scale nobody knows how well the levels are kept apart.',
  'coarse-dose':
    'A weight near the smallest step of the scale can be off by a large share of itself, and yeast by a share is time by a share.',
  'bench-flour':
    'Flour from the bench and water from wet hands move the level, and sticky doughs take more of it.',
  'mixer-size': 'A mixer with too little or too much dough mixes it less.',
  'several-hands':
    'Two people knead and shape differently; if one has the wet doughs, the hands are judged too.',
  'key-keeper':
    'Who knows the codes gives them away without meaning to; a helper who does not pour the tea can keep them.',
  'knowing-tasters': 'Who knows which is which scores what they expect.',
  'tasters-talk': 'A word or a face makes several opinions into one.',
  'many-samples':
    'A mouth tires after a handful of samples, and the last ones are scored by a tired mouth.',
  'one-session':
    'Whatever went differently with one batch cannot be told from the factor; only making it again can.',
  'few-tasters': power,
  'few-sessions': power,
  'no-expectation': 'Afterwards everybody expected what happened.',
  'no-main-response':
    'Of many answers one always looks striking; the verdict must be about one chosen before.',
  'no-margin':
    'Without the smallest difference you care about, nothing can be called as good as the best.',
  'no-control':
    'With a flour or an oven you do not know, only your usual one tells what is due to the factor.',
  'flour-lots': 'Bags of the same name take up water differently, which is a second factor.',
  'levels-wide':
    'Steps this large compare different breads, and the best may lie between two of them.',
  'outside-usual':
    'Far outside, other things than the factor may go wrong first. Published ranges disagree, so this is a hint.',
  'serving-rule': 'A thicker slice or a richer topping is liked for itself.',
  'baker-scores': 'Who mixed and shaped a dough knows which it is.',
  'no-warm-up': 'The first piece meets a floor and a mouth that no other piece meets.',
  'ferment-hours':
    'Time and warmth ripen a dough together, and hours at one temperature count both. They compare the doughs of one trial and predict nothing.',
  'dough-warmth': warmth,
  'piece-warmth': warmth,
  'levels-handled': 'The dough that was made is not the dough that was weighed.',
  'age-baked': ages,
  'mouth-minutes': fresh,
  'age-tasted': fresh,
  'oven-floor': 'A hotter floor browns and lifts a piece whatever its level.',
  'piece-before-done': before,
  'failures-by-level':
    'What stuck or burnt was not lost by chance: a level judged by its survivors looks better than it is.',
  practice: 'Hands learn over the day, so early levels pay for it.',
  'folds-done': 'Each fold builds strength; sticky doughs get more of them unless somebody counts.',
  departed: 'What was done differently stands beside the findings, so that a reader can judge it.',
  'tasters-missing':
    'A level tasted without the harsh taster looks better; the findings allow for who was missing.',
  'cut-warm': 'Hot crumb smears and smells stronger than the same crumb cooled.',
  peeks: 'Who has seen the key is no longer blind.',
  'early-looks': 'Who looks early may stop when the answer pleases.',
  'added-sessions': 'Sessions added after a look may go on until the answer pleases.',
  'closed-early': 'Answers that were not given may not be missing by chance.',
}
