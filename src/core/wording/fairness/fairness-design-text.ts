import type { ItemOf } from '@/core/fairness/fairness-item.ts'
import { bakerTastesBlind } from '@/core/trial/baker-tastes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText, plainNumber, withUnit } from '@/core/units/number-text.ts'
import { minutesBetween } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'
import { widestDifference } from '@/core/wording/words/within-scale.ts'
import { rangeText, type Sentences, sizeText } from './fairness-sentence.ts'

type OrderCode = 'dough-order' | 'bake-order' | 'mouth-order' | 'load' | 'oven-place'

const ordered: Record<OrderCode, string> = {
  'dough-order': 'The order of the doughs',
  'bake-order': 'The order of baking',
  'mouth-order': 'The order at the table',
  load: 'The oven load',
  'oven-place': 'The place in the oven',
}
const against = {
  level: 'with the level',
  middle: 'with the distance from the middle level',
  option: 'with the option',
} as const

function orderSentence(item: ItemOf<OrderCode>, plan: Plan): string {
  const size = item.amount?.value ?? 0
  const over = `over ${countText(item.data.sessions, 'session')}`
  if (size < 0.005) return `${ordered[item.code]} is even for all levels ${over}.`
  const ends = [...(item.perLevel ?? [])].sort((a, b) => a.value - b.value)
  const [first, last] = [ends[0], ends.at(-1)]
  const mean =
    first && last && last.value - first.value > 0.005
      ? ` ${levelNamed(plan, first.levelId)} stands at ${decimalText(first.value, 1)} on average, ${levelNamed(plan, last.levelId)} at ${decimalText(last.value, 1)}.`
      : ''
  return `${ordered[item.code]} goes ${against[item.data.against]} ${over}: ${decimalText(size, 2)} on a scale from 0, even, to 1, not to be told apart.${mean}`
}

/** These items are raised for nine-point scales alone. */
const most = widestDifference('nine-point') ?? Number.POSITIVE_INFINITY

const shows = (item: ItemOf<'few-tasters' | 'few-sessions'>, of: string) =>
  item.data.wouldShow > most
    ? `${of} no difference between 1 and 9 would show for sure; your margin is ${plainNumber(item.data.margin)}.`
    : `${of} only a difference of about ${decimalText(item.data.wouldShow, 1)} would show; your margin is ${plainNumber(item.data.margin)}.`

const names = { hydration: 'hydration', salt: 'salt', yeast: 'yeast' } as const

/** Sentences about orders, ages, tasting and what the design can answer, before the flour is wet. */
export const designSentences: Sentences<
  | OrderCode
  | 'piece-before'
  | 'age-at-baking'
  | 'oven-to-mouth'
  | 'age-at-tasting'
  | 'several-hands'
  | 'key-keeper'
  | 'knowing-tasters'
  | 'tasters-talk'
  | 'many-samples'
  | 'one-session'
  | 'few-tasters'
  | 'few-sessions'
  | 'no-expectation'
  | 'no-main-response'
  | 'no-margin'
  | 'no-control'
  | 'flour-lots'
  | 'levels-wide'
  | 'outside-usual'
  | 'serving-rule'
  | 'baker-scores'
  | 'no-warm-up'
> = {
  'dough-order': orderSentence,
  'bake-order': orderSentence,
  'mouth-order': orderSentence,
  load: orderSentence,
  'oven-place': orderSentence,
  'piece-before': (item) =>
    `Each level comes ${rangeText(item.data, 0, 'times')} directly after each other one.`,
  'age-at-baking': (item) =>
    item.data.high < 0.5
      ? 'Each piece can go into the oven as soon as it is ready.'
      : `Beyond its method a piece waits ${minutesBetween(item.data, 0)} for the oven, by level: ${sizeText(item, 1)} % of the way from mix to oven.`,
  'oven-to-mouth': (item) =>
    `From oven to mouth the levels take ${minutesBetween(item.data, 1)} on average.`,
  'age-at-tasting': (item) =>
    `When tasted, the levels are ${minutesBetween(item.data, 0)} out of the oven on average, ${sizeText(item, 0)} % apart.`,
  'several-hands': (_, plan) =>
    `${asSentenceStart(countText(plan.pairsOfHands, 'pair'))} of hands work the doughs.`,
  'key-keeper': (_, plan) =>
    bakerTastesBlind(plan)
      ? 'The baker keeps the key and is to taste blind: a helper has to plate, or both cannot be.'
      : 'The baker keeps the key and serves.',
  'knowing-tasters': (item) =>
    `${item.data.knowing} of ${item.data.tasters} tasters ${item.data.knowing === 1 ? 'knows' : 'know'} which is which.`,
  'tasters-talk': () => 'The tasters talk while they score.',
  'many-samples': (item) =>
    `A sitting has ${sizeText(item, 0)} samples; ${item.data.usualMost} are as many as a mouth keeps apart.`,
  'one-session': (item) =>
    item.data.unit === 'batch'
      ? 'Every level is mixed once only, so nothing can be said of the factor itself.'
      : 'Everything is made on one day only, so nothing can be said of the factor itself.',
  'few-tasters': (item, plan) =>
    shows(item, `Of these pieces, with ${countText(plan.tasters.length, 'taster')},`),
  'few-sessions': (item, plan) =>
    shows(item, `Of the factor, with ${countText(plan.plannedSessions, 'session')},`),
  'no-expectation': () => 'Nothing is written down of what you expect.',
  'no-main-response': () => 'No response is the main one.',
  'no-margin': () => 'The main response has no margin.',
  'no-control': (item) =>
    `No ${item.data.choice ? 'option' : 'level'} is marked as your usual one.`,
  'flour-lots': (item) => `${item.data.name} comes from ${sizeText(item, 0)} bags or lots.`,
  'levels-wide': (item) =>
    `The levels span ${sizeText(item, 0)} % of the whole usual range of ${names[item.data.of]} over all styles, ${plainNumber(item.data.usualLow)} to ${withUnit(plainNumber(item.data.usualHigh), '%')}.`,
  'outside-usual': (item) =>
    `A level lies ${sizeText(item, 1)} points outside the usual ${plainNumber(item.data.low)} to ${withUnit(plainNumber(item.data.high), '%')} of ${names[item.data.of]}.`,
  'serving-rule': (item) =>
    item.data.topped
      ? 'The pieces are topped, and nothing fixes how.'
      : 'Nothing fixes how a serving is cut and offered.',
  'baker-scores': (item) => `${item.data.name} is the main response and the baker scores it.`,
  'no-warm-up': () => 'The first counted piece is also the first in the oven and in the mouth.',
}
