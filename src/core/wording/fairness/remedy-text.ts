import type { Remedy } from '@/core/fairness/remedy.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { ingredientName, levelNamed, stepName } from '@/core/wording/words/named-in-plan.ts'

const plain = {
  'match-water': 'Match the water',
  'add-flight': 'Add a flight',
  'drop-flight': 'Bake one flight less',
  'add-session': 'Add a session',
  'reverse-next': 'Add a session in the reverse order',
  'helper-keeps-key': 'Let a helper keep the key',
  'tasters-silent': 'Taste without talking',
  'add-warm-up': 'Bake a warm-up piece first',
  'tasters-score': 'Let the tasters score it',
  'one-dough': 'Divide one dough late',
  'mix-apart': 'Mix a dough for each level',
  'one-pair-of-hands': 'Let one pair of hands do it all',
  'weigh-bake-loss':
    'Weigh each piece into the oven and cooled, and compare loss and colour between the levels.',
  'bake-in-blocks':
    'Bake all of one temperature together, and let the oven settle before the next; reverse the order next session.',
  'own-water-by-trying':
    'Find each flour’s own water first, to the same feel, and give each level its own; or ask about the swap as it stands.',
  'temper-second-water':
    'Say the temperature of the water that goes in later, beside its weight, and add it at the same moment at every level.',
  'rest-covered': 'Let it stand covered, where it is as warm as the dough should be.',
  'reverses-itself': 'The next session takes the reverse order by itself.',
  'starter-corrected': 'The weigh sheet already takes it off.',
  'enter-temperatures': 'Enter the flour and room temperatures and the dough temperature you want.',
  'correct-water-by-reading': 'Read the first dough, and correct the water of the next ones by it.',
  'warm-cold-ingredients':
    'Let milk, and what else comes from the fridge, stand until it is as warm as the room.',
  'say-own-water': 'If each flour should stand at its own best, give each option its own water.',
  'finer-scale': 'Use a finer scale.',
  'levels-further-apart': 'Set the levels further apart.',
  'levels-closer': 'Try fewer or closer levels, and narrow later.',
  'larger-batches': 'Make larger batches.',
  'two-mixes': 'Mix smaller batches, or split each into two mixes.',
  'more-tasters': 'Ask more tasters.',
  'blind-tasters':
    'Ask people who do not know which is which, or leave out what the knowing ones score.',
  'taste-later': 'Taste the next day, when an hour matters less.',
  'taste-timed': 'Taste each loaf at the same age.',
  'dose-at-once': 'Dose the stock to all batches at one moment, before the first mix.',
  'weigh-bench-flour': 'Weigh the bench flour of each piece and log it.',
  'oil-or-water-on-bench': 'Use a little oil on the bench, the same for all.',
  'blend-bags': 'Blend the bags before the first batch is weighed.',
  'write-expectation': 'Write down what you expect.',
  'choose-main-response': 'Choose the main response.',
  'name-margin': 'Name the smallest difference you would care about.',
  'mark-control': 'Mark your usual one as the control.',
  'write-serving-rule': 'Write down how each serving is cut, topped and offered.',
  'name-scale': 'Name the scale you weigh on.',
  'wait-for-oven-floor': 'Launch each piece at the same floor temperature.',
  'practise-first': 'Handle a spare piece of each level before the counted ones.',
  'keep-findings-shut': 'Keep the findings shut until the last planned session.',
  'repeat-the-lost':
    'Bake spares, or repeat the session, so that no level is judged by its survivors.',
  'cool-longer': 'Let every piece cool as long as planned.',
  'follow-clock-plan': 'Give every level the same rests, or be aware that time changes too.',
} as const satisfies Partial<Record<Remedy['code'], string>>

function watersText(waters: readonly { levelId: string; percent: number }[], plan: Plan): string {
  return listText(
    waters.map(
      ({ levelId, percent }) =>
        `${withUnit(plainNumber(percent), '%')} at ${levelNamed(plan, levelId)}`,
    ),
  )
}

/** What to do about a fairness item: the text of a button where one press applies it, else a piece of advice. */
export function remedyText(remedy: Remedy, plan: Plan): string {
  switch (remedy.code) {
    case 'hold':
      return { flour: 'Hold the flour', dough: 'Hold the dough', piece: 'Hold the piece mass' }[
        remedy.held
      ].concat(' instead')
    case 'end-by-mark': {
      const names = remedy.stepIds.map((id) => stepName(plan, id))
      return names.length === 1 ? `End ${names[0]} by a mark` : 'End the proofs by a mark'
    }
    case 'end-by-core':
      return `End ${stepName(plan, remedy.stepId)} at ${plainDegrees(remedy.celsius)} of core`
    case 'end-by-loss':
      return `End ${stepName(plan, remedy.stepId)} by bake loss`
    case 'end-by-colour':
      return `End ${stepName(plan, remedy.stepId)} by colour`
    case 'end-by-windowpane': {
      const names = remedy.stepIds.map((id) => stepName(plan, id))
      return names.length === 1
        ? `End ${names[0]} by the window pane`
        : 'End the folds by the window pane'
    }
    case 'own-waters':
      return `Give each level its own water: ${watersText(remedy.waters, plan)}`
    case 'share-dose':
      return `${remedy.by === 'stock' ? 'One stock' : 'One dry mix'} of ${ingredientName(plan, remedy.ingredientId)} for all`
    case 'equal-folds':
      return `${stepName(plan, remedy.stepId)}: ${remedy.repeats} for every level`
    default:
      return plain[remedy.code]
  }
}
