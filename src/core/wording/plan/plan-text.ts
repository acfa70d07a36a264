import type { Expectation } from '@/core/trial/expectation.ts'
import type { Held, SplitsAt } from '@/core/trial/factor.ts'
import { movesFormula } from '@/core/trial/moves-formula.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Response } from '@/core/trial/response.ts'
import type { EndsBy, Step } from '@/core/trial/step.ts'
import { stepTolerance } from '@/core/trial/step-tolerance.ts'
import { writtenFirst } from '@/core/trial/written-first.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'

const splits: Record<SplitsAt, string> = {
  mix: 'at the mix: every level is a dough of its own',
  divide: 'at the divide: levels part when the dough is divided',
  proof: 'at the proof: levels part when the pieces proof',
  oven: 'at the oven: levels part when the pieces are baked',
}

const held: Record<Held, string> = {
  flour: 'flour is held, so dough and pieces change in mass',
  dough: 'dough mass is held, so the flour in it changes',
  piece: 'piece mass is held, so the flour in a piece changes',
}

const directions: Record<Expectation['direction'], string> = {
  rises: 'rises with the factor',
  falls: 'falls with the factor',
  'best-inside': 'has its best inside the range',
  'no-difference': 'does not differ enough to matter',
}

/** At which step the levels part, and what that makes of the doughs. */
export function splitText(splitsAt: SplitsAt): string {
  return splits[splitsAt]
}

/** What is held alike while the factor moves, and what changes for it; a factor that leaves the formula alone holds it. */
export function heldText(plan: Pick<Plan, 'factor' | 'levels'>): string {
  if (movesFormula(plan)) return held[plan.factor.held]
  return plan.factor.acts.on === 'piece-mass'
    ? 'the formula is held, and only the pieces change in mass'
    : 'the formula is held: it is the same at every level'
}

/** What the baker expected before the first mix, in one sentence; without one that is said too. */
export function expectationText(
  expectation: Expectation | null,
  response: string,
  unit: string,
): string {
  if (expectation === null) return 'None was written down.'
  const guess =
    expectation.bestGuess === null
      ? ''
      : `; best guess ${withUnit(plainNumber(expectation.bestGuess), unit)}`
  const why = expectation.why ? ` (${expectation.why})` : ''
  return `${response} ${directions[expectation.direction]}${guess}${why}.`
}

/** How far a step's wait may be off: the same both ways, later only, or each way its own. */
export function toleranceText(step: Step): string {
  const { earlySeconds, lateSeconds } = stepTolerance(step)
  if (earlySeconds === lateSeconds) return `± ${durationText(lateSeconds)}`
  if (earlySeconds === 0) return `up to ${durationText(lateSeconds)} later`
  return `${durationText(earlySeconds)} early, ${durationText(lateSeconds)} late`
}

/** What ends a step: the clock, a mark or a reading. */
export function endsByText(endsBy: EndsBy): string {
  if (endsBy.by === 'clock') return 'by the clock'
  if (endsBy.by === 'reading')
    return `when the ${readings[endsBy.of]} reads ${plainDegrees(endsBy.celsius)}`
  if (endsBy.text) return endsBy.text
  if (endsBy.mark === 'rise')
    return endsBy.risePercent === undefined
      ? 'when it has risen'
      : `at ${plainNumber(endsBy.risePercent)} % rise`
  if (endsBy.mark === 'bake-loss' && endsBy.lossPercent !== undefined)
    return `at ${plainNumber(endsBy.lossPercent)} % bake loss`
  return marks[endsBy.mark]
}

const readings = { dough: 'dough', 'oven-floor': 'oven floor', core: 'core' } as const
const marks = {
  poke: 'by the poke test',
  'bake-loss': 'by its bake loss',
  colour: 'by its colour',
  windowpane: 'at the windowpane',
  own: 'at a mark of the baker’s own',
}

/** How a response is answered and which way is better, in a few words. */
export function responseText(response: Response): string {
  const by =
    response.by === 'taster' ? 'by the tasters, blind' : 'by the baker, who knows the dough'
  return `${scaleText(response)}, ${by}; ${betterText(response)}${
    response.margin === null
      ? ''
      : `; margin ${withUnit(plainNumber(response.margin), unitOfResponse(response))}`
  }`
}

function unitOfResponse(response: Response): string {
  return response.scale.kind === 'measured' ? response.scale.unitOfMeasure : ''
}

function scaleText({ scale }: Response): string {
  if (scale.kind === 'nine-point') return 'nine-point scale'
  if (scale.kind === 'just-about-right') return `five points from ${scale.low} to ${scale.high}`
  return scale.unitOfMeasure === '' ? 'a number' : `in ${scale.unitOfMeasure}`
}

function betterText({ better }: Response): string {
  if (better.is === 'target') return `best at ${plainNumber(better.at)}`
  return better.is === 'neither' ? 'neither way is better' : `${better.is} is better`
}

/** What was written down before the first mix beside the expectation, a line each; empty where nothing was. */
export function writtenFirstTexts(plan: Plan): string[] {
  const { hopedLevelId, mostSessions, looks, againstUsual } = writtenFirst(plan)
  const hoped = plan.levels.find(({ id }) => id === hopedLevelId)
  return [
    hoped
      ? `${levelText(hoped, plan.factor.unitOfMeasure)} is hoped to do as well as the best`
      : '',
    mostSessions === null ? '' : `${countText(mostSessions, 'session')} at most`,
    looks ? 'looked at after each session from the second on' : '',
    againstUsual ? 'every level compared with the usual' : '',
  ].filter(Boolean)
}

/** How it is served and what a session holds. */
export function servingText(plan: Plan): string {
  const how = plan.serving === 'as-baked' ? 'served as baked' : 'rested before serving'
  const warm = plan.warmUpPiece ? ', after a warm-up piece that does not count' : ''
  return `${countText(plan.flights, 'flight')} a session, ${how}${warm}`
}
