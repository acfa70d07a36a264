import { massText } from '@/core/units/mass-text.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import { durationText, minutesBetween } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { levelNamed, stepName } from '@/core/wording/words/named-in-plan.ts'
import {
  degreesBetween,
  proofText,
  rangeText,
  type Sentences,
  sizeText,
  stepsApart,
} from './fairness-sentence.ts'

const counted = (parts: readonly (readonly [number, string, string?])[]) =>
  asSentenceStart(
    listText(
      parts
        .filter(([count]) => count > 0)
        .map(([count, one, many]) => countText(count, one, many ?? `${one}s`)),
    ),
  )

/** Sentences about what the log shows of the same, and of what only happens on the day. */
export const logSentences: Sentences<
  | 'dough-warmth'
  | 'ferment-hours'
  | 'piece-warmth'
  | 'levels-handled'
  | 'age-baked'
  | 'mouth-minutes'
  | 'age-tasted'
  | 'oven-floor'
  | 'piece-before-done'
  | 'failures-by-level'
  | 'practice'
  | 'folds-done'
  | 'departed'
  | 'tasters-missing'
  | 'cut-warm'
  | 'peeks'
  | 'early-looks'
  | 'added-sessions'
  | 'closed-early'
> = {
  'ferment-hours': (item) =>
    `From the first reading to the oven the doughs had ${rangeText(item.data, 2, 'h')} at ${plainDegrees(24)} by level, ${sizeText(item, 1)} % apart.`,
  'dough-warmth': (item) =>
    `The doughs left the mixer at ${degreesBetween(item.data, 1)} by level, ${stepsApart(item, 1)} apart${proofText(item.data)}.`,
  'piece-warmth': (item) =>
    `The pieces were at ${degreesBetween(item.data, 1)} by level, ${stepsApart(item, 1)} apart.`,
  'levels-handled': (item, plan) => {
    const { levelId, planned, handled, gap, dustingGrams } = item.data
    const dusted =
      dustingGrams > 0 ? ` with ${massText(dustingGrams, 0)} of dusting flour a batch` : ''
    return `${levelNamed(plan, levelId)} came out as ${decimalText(handled, 1)}${dusted}: ${decimalText(Math.abs(handled - planned), 1)} off, where the smallest gap between levels is ${decimalText(gap, 1)}.`
  },
  'age-baked': (item) =>
    `From mix to oven the levels took ${minutesBetween(item.data, 0)} on average, ${sizeText(item, 1)} % apart.`,
  'mouth-minutes': (item) =>
    `From oven to mouth the levels took ${minutesBetween(item.data, 1)} on average.`,
  'age-tasted': (item) =>
    `When tasted, the levels were ${minutesBetween(item.data, 0)} out of the oven on average, ${sizeText(item, 0)} % apart.`,
  'oven-floor': (item) =>
    `Before the launch the floor read ${degreesBetween(item.data, 0)} by level, ${stepsApart(item, 0)} apart.`,
  'piece-before-done': (item) =>
    `As baked, one level came ${rangeText(item.data, 0, 'times')} directly after another.`,
  'failures-by-level': (item) =>
    `${item.data.failed} of ${item.data.pieces} pieces failed: ${rangeText(item.data, 0, '%')} of a level’s pieces.`,
  practice: (item) =>
    `${asSentenceStart(countText(item.data.early, 'failure'))} came in the first half of the pieces, ${countText(item.data.late, 'failure')} in the second.`,
  'folds-done': (item, plan) =>
    `${stepName(plan, item.data.stepId)} was done ${rangeText(item.data, item.data.high % 1 === 0 && item.data.low % 1 === 0 ? 0 : 1, 'times')}, by level.`,
  departed: ({ data }) =>
    `${counted([
      [data.order, 'change of order', 'changes of order'],
      [data.wait, 'wait outside its tolerance', 'waits outside their tolerance'],
      [data.weight, 'weight off', 'weights off'],
      [data.steps, 'step passed over or repeated', 'steps passed over or repeated'],
    ])}.`,
  'tasters-missing': ({ data }) =>
    `${counted([
      [data.late, 'taster came unplanned', 'tasters came unplanned'],
      [data.left, 'taster left early', 'tasters left early'],
      [data.declined, 'taster declined', 'tasters declined'],
    ])}.`,
  'cut-warm': (item) =>
    `${asSentenceStart(countText(item.data.pieces, 'piece was', 'pieces were'))} cooled for less than planned, one for ${durationText(item.data.shortestSeconds)} instead of ${durationText(item.data.plannedSeconds)}.`,
  peeks: (item) =>
    `The key was looked at ${countText(item.amount?.value ?? 0, 'time')} before it was unsealed.`,
  'early-looks': (item) =>
    `The findings were opened ${countText(item.amount?.value ?? 0, 'time')} before the last planned session.`,
  'added-sessions': (item) =>
    `${asSentenceStart(countText(item.amount?.value ?? 0, 'session was', 'sessions were'))} added after the planned ones.`,
  'closed-early': (item) =>
    `The tasting was closed before every ballot was in, ${countText(item.amount?.value ?? 0, 'time')}.`,
}
