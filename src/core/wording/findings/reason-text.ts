import type { Absent, FindingsReason } from '@/core/findings/reason.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'

const sentences: Record<FindingsReason, string> = {
  'no-rows': 'There is nothing recorded to compute from.',
  'one-level': 'Only one level has values, so there is nothing to compare.',
  'one-block': 'Only one session holds values, so a session cannot be told from chance.',
  'level-without-rows': 'One of the levels has no value at all.',
  'levels-not-connected': 'The levels were never compared side by side by anyone.',
  'no-residual-df': 'There are too few values to know how much they scatter.',
  'no-residual-variance': 'All values fit without any scatter, so there is no error to judge by.',
  'all-equal': 'All values are equal.',
  'level-values-equal': 'All levels have the same value, so no line can be drawn.',
  'needs-three-levels': 'A curve needs at least three levels.',
  'covariate-not-separable':
    'It changes exactly along with the levels, so the two cannot be told apart.',
  'no-lack-of-fit-df': 'With three levels a curve always fits; its fit cannot be tested.',
  'no-curvature': 'The levels show no bend, so there is no top to find.',
  'no-slope': 'The line is level, so it never reaches the target.',
  'no-complete-block': 'No taster scored every level.',
  'too-few-clusters':
    'There are too few tasters and sessions to draw them again and see how the best moves.',
  'no-resample-had-a-best': 'Drawn again, the data never showed a best inside the range.',
  'group-empty': 'Nobody answered that way.',
  'group-not-separable':
    'Those answers all came from one taster and level, so their cost cannot be told apart.',
  'constant-values': 'All of these scores are equal, so they go with nothing.',
  'too-few-values': 'There are too few values.',
  'never-reached': 'No number of tasters or sessions within reason would do.',
  'still-sealed': 'The codes are still sealed: the answer opens when the last ballot is in.',
  'no-scores': 'Nothing has been recorded for this yet.',
  'needs-two-tasters': 'This needs at least two tasters.',
  'needs-two-sessions': 'One session cannot answer this: the doughs must be made again.',
  'needs-two-blocks': 'This needs the levels side by side at least twice.',
  'one-flight':
    'With one flight there is one piece of each level, so what the level does cannot be told from how pieces scatter.',
  'several-sessions': 'With more than one session the factor’s own rung answers this.',
  'tasters-not-shared':
    'Different tasters scored different doughs, so doughs and tasters cannot be told apart.',
  'choice-factor': 'Options without order have no slope and no best in between.',
  'no-control': 'No level is marked as the control, or the control has no score.',
  'no-minutes': 'Nobody recorded when the pieces came out of the oven or were served.',
  'no-positions': 'The order of tasting is not known.',
  'not-logged': 'The bench log does not say how the levels came out as handled.',
  'not-significant': 'This is looked at only after a clear difference by rank.',
  'group-too-small': 'Too few answers: a fifth of all, five servings and four tasters are needed.',
  'no-margin': 'No margin was named, so nothing can be called as good.',
  'no-direction': 'It was not said whether more or less of this is better.',
  'margin-too-fine':
    'With this much scatter nothing could be shown to be as good within so fine a margin.',
  'no-target': 'No target was named.',
  'never-crosses': 'The curve does not reach the target.',
  tied: 'More than one level stands first.',
  'not-asked': 'Not worked out yet.',
  'too-few-to-tell': 'There are too few sessions to say.',
  'no-parts': 'No response says which way is better, so there is nothing to weigh.',
}

/** Why an answer is not there, in one sentence, and where known how much more would answer it. */
export function reasonText(absent: Absent): string {
  const wanted = [
    absent.tasters === undefined ? '' : countText(absent.tasters, 'taster'),
    absent.sessions === undefined ? '' : countText(absent.sessions, 'session'),
    absent.flights === undefined ? '' : countText(absent.flights, 'flight'),
  ].filter((text) => text !== '')
  const sentence = sentences[absent.reason]
  return wanted.length === 0
    ? sentence
    : `${sentence} ${asSentenceStart(wanted.join(' or '))} would answer it.`
}
