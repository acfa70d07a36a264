import type { PlanProblem } from '@/core/trial/plan-problem.ts'
import { plainMass, scaleStepText, weightText } from '@/core/units/mass-text.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { degreesRange, plainDegrees } from '@/core/units/temperature-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'
import { formulaProblemText, movedFormulaText } from './formula-problem-text.ts'

type Trouble = PlanProblem extends infer Each
  ? Each extends PlanProblem
    ? Omit<Each, 'path' | 'severity'>
    : never
  : never

const plain = {
  'empty-question': 'Write down what the trial asks.',
  'nameless-factor': 'Name the one thing that changes.',
  'fewer-than-two-levels': 'A comparison needs two levels at least; add another.',
  'no-control':
    'No level is the control. Mark your usual one, so that the answer can say what changes for you.',
  'level-without-value': 'Give this level a value.',
  'empty-label': 'Give this option a name.',
  'option-without-change':
    'Say what this option changes, or the formula is the same for all. Is that meant?',
  'one-dough-cannot-serve':
    'The factor begins to act at the mix, so one dough cannot serve all levels; mix them apart.',
  'flour-from-itself':
    'A flour cannot take its share from itself; choose another flour to give way.',
  'no-responses': 'Say what you will record: without a response there is nothing to compare.',
  'no-main-response': 'Choose the main response: the answer will be about it.',
  'main-response-missing': 'The main response is no longer among the responses; choose another.',
  'nameless-response': 'Give this response a name.',
  'no-margin':
    'Name the smallest difference you would care about; without it nothing can be called too small to matter.',
  'no-expectation': 'Write down what you expect before you mix; afterwards it cannot be added.',
  'hoped-level-gone':
    'The level you hope will do as well is no longer among the levels; choose another.',
  'no-usual-level':
    'Each level is to be compared with your usual, but no level is marked as the control; mark it.',
  'no-steps': 'The method has no steps yet.',
  'no-mix-step': 'The method has no mix. Is that meant?',
  'no-bake-step': 'The method has no bake. Is that meant?',
  'no-tasters': 'A response is scored by tasters, but there are none; add them.',
  'one-taster': 'One taster tells about one palate only. Can you ask another?',
  'no-scale':
    'There is no scale in the kitchen, so nobody knows how well the levels can be kept apart; add yours.',
  'tell-apart-same-level': 'The tell-apart test compares a level with itself; choose two.',
  'pair-of-nothing':
    'Say what the tasters are to find more of, such as saltiness; without it the question has no answer.',
  'again-while-hot':
    'A second slice of the same piece would be older and cooler than the first, so nothing is served again hot; bake a second flight instead, or serve rested.',
  'words-name-level':
    'These words hold a figure or the name of a level, and every taster reads them. Say it without, so that nobody learns which is which.',
  'no-usual-to-guess':
    'Tasters are asked which one was your usual, but no level is marked as it; mark it, or ask nothing.',
  'plates-while-hot':
    'Plates are shuffled once all samples are cut and cool; hot ones go out as they come, so nothing is shuffled. Serve rested.',
  'plates-of-several':
    'Plates that one person shuffles are for that person alone, and others taste too; let one of them plate by codes instead.',
  'reference-on-plates':
    'A set with a named reference cannot be shuffled, since the reference must be known; choose three of which one is odd.',
  'cups-and-sets':
    'Which dough is which is unknown until the tickets are turned, so no set of two given levels can be plated; leave one of the two out.',
} as const satisfies Partial<Record<PlanProblem['reason'], string>>

/** What is wrong with a plan, with the mend, in one sentence for the field that its path names. */
export function planProblemText(trouble: Trouble): string {
  if (trouble.reason in plain) return plain[trouble.reason as keyof typeof plain]
  switch (trouble.reason) {
    case 'most-below-planned':
      return `At most as many sessions as planned or more: ${trouble.plannedSessions} are planned.`
    case 'looks-too-many':
      return `How clear each look has to be is worked out for up to ${trouble.most} sessions; beyond that it is only nearly known.`
    case 'too-many-levels':
      return `More than ${trouble.most} levels cannot be served in balanced orders; take some out.`
    case 'two-controls':
      return `${listText(trouble.labels)} are both marked as the control; keep one.`
    case 'duplicate-label':
      return `${trouble.label} stands twice; give each option its own name.`
    case 'duplicate-value':
      return `${plainNumber(trouble.value)} stands twice; change one of them.`
    case 'options-alike':
      return `${trouble.label} and ${trouble.otherLabel} change the same things. Is that meant?`
    case 'levels-collide-on-scale':
      return `On this scale ${trouble.label} gets the same ${weightText(trouble.grams, trouble.resolutionGrams || null)} of ${trouble.ingredientName} as ${trouble.otherLabel}, in steps of ${scaleStepText(trouble.resolutionGrams)}; set them further apart or use a finer scale.`
    case 'level-out-of-range':
      return `${plainNumber(trouble.value)} is out of range; enter ${plainNumber(trouble.least)} to ${plainNumber(trouble.most)}.`
    case 'level-not-whole':
      return `${plainNumber(trouble.value)} is not a whole number; this factor is counted.`
    case 'level-cannot-be-made':
      return `At ${trouble.label}: ${movedFormulaText(trouble.trouble)}`
    case 'level-breaks-formula':
      return `At ${trouble.label}: ${formulaProblemText(trouble.trouble)}`
    case 'factor-names-nothing':
      return `The factor names ${trouble.what === 'ingredient' ? 'an ingredient' : `a ${trouble.what}`} that is no longer there; choose another.`
    case 'factor-names-wrong-kind':
      return `${trouble.name} is ${trouble.found}, but this factor moves ${trouble.wanted}; choose another.`
    case 'more-pieces-than-dough':
      return `${trouble.asked} pieces are asked of a dough for ${trouble.has}; make more dough or fewer flights.`
    case 'codes-run-out':
      return `Each of the ${trouble.plannedSessions} sessions takes ${trouble.asked} serving codes, and the three-digit codes of a trial last for ${trouble.lastFor}. Plan fewer flights or fewer sessions.`
    case 'pieces-outweigh-dough':
      return outweighText(trouble)
    case 'duplicate-response':
      return `${trouble.name} stands twice; give each response its own name.`
    case 'margin-not-above-zero':
      return 'The margin must be above zero: the smallest difference you would care about.'
    case 'margin-past-scale':
      return `A margin of ${plainNumber(trouble.margin)} is wider than the scale’s ${plainNumber(trouble.widest)}; enter less.`
    case 'anchor-missing':
      return `Put a word beside ${trouble.at}, so that all tasters mean the same.`
    case 'best-guess-outside':
      return `The best guess ${plainNumber(trouble.bestGuess)} lies outside the levels ${plainNumber(trouble.least)} to ${plainNumber(trouble.most)}. Is that meant?`
    case 'step-takes-no-time':
      return `${trouble.name} takes no time at all; enter hands-on time or a wait.`
    case 'tolerance-past-wait':
      return `${trouble.name}: ending ${durationText(trouble.earlySeconds)} early is more than the whole wait of ${durationText(trouble.waitSeconds)}.`
    case 'mark-without-words':
      return `${trouble.name}: say what mark ends it.`
    case 'cools-as-baked':
      return `${trouble.name} waits ${durationText(trouble.waitSeconds)}, yet the pieces are served as baked: serve them rested, or let them cool ${durationText(trouble.mostSeconds)} at most.`
    case 'taster-twice':
      return 'This taster stands twice; take one out.'
    case 'kitchen-thing-missing':
      return 'Something the plan uses is no longer in the kitchen; choose another.'
    case 'shared-dose-names-nothing':
      return 'The shared dose names an ingredient that the formula does not hold; choose another.'
    case 'tell-apart-level-missing':
      return 'The tell-apart test names a level that is no longer there; choose another.'
    case 'again-level-missing':
      return 'A level to be served again is no longer among the levels; choose another.'
    case 'temperature-unusual':
      return `${plainDegrees(trouble.celsius)} is outside the usual ${degreesRange(trouble.least, trouble.most)}. Is that meant?`
    case 'oven-heat-unusual':
      return `${plainNumber(trouble.value)} ${trouble.unit} is outside the usual ${plainNumber(trouble.least)} to ${plainNumber(trouble.most)} ${trouble.unit} of an oven. Is that meant?`
    case 'hotter-than-oven':
      return `${listText(trouble.names)} ${trouble.names.length === 1 ? 'goes' : 'go'} up to ${plainNumber(trouble.most)} ${trouble.unit}, not to ${plainNumber(trouble.value)} ${trouble.unit}. Is that meant?`
    case 'oven-holds-fewer':
      return `${listText(trouble.names)} ${trouble.names.length === 1 ? 'holds' : 'hold'} ${trouble.holds} at once, not ${trouble.asked}; enter ${trouble.holds} or less, or choose another oven.`
    case 'fridge-holds-fewer':
      return `${trouble.asked} doughs or pieces prove cold at once, but ${listText(trouble.names)} ${trouble.names.length === 1 ? 'holds' : 'hold'} ${trouble.holds}; choose another fridge too, or make fewer.`
    default:
      return formulaProblemText(trouble as Parameters<typeof formulaProblemText>[0])
  }
}

function outweighText(trouble: Extract<Trouble, { reason: 'pieces-outweigh-dough' }>): string {
  const { label, pieces, grams, doughGrams, leastFlourGrams } = trouble
  const asked = `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} of ${label === null ? 'all levels' : `level ${label}`}`
  const ask = pieces === 1 ? 'asks' : 'ask'
  return `${asked} ${ask} for ${weightText(grams, 1)}, but a batch of this flour is ${weightText(doughGrams, 1)} of dough; enter ${plainMass(leastFlourGrams)} of flour or more, or make smaller or fewer pieces.`
}
