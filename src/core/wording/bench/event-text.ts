import type { Event, EventOf } from '@/core/session/event-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plainMass } from '@/core/units/mass-text.ts'
import { plainNumber, withUnit } from '@/core/units/number-text.ts'
import { plainDegrees } from '@/core/units/temperature-text.ts'
import { doseName } from '@/core/weighing/written-sheet.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { ingredientName } from '@/core/wording/words/named-in-plan.ts'
import { failureText } from './failure-text.ts'

const workedIn: Record<EventOf<'worked-in'>['what'], string> = {
  'dusting-flour': 'bench flour',
  'hand-water': 'water from wet hands',
  oil: 'oil',
}

const temperatures: Record<EventOf<'temperature'>['of'], string> = {
  dough: 'Dough',
  piece: 'Piece',
  flour: 'Flour',
  water: 'Water',
  room: 'Room',
  preferment: 'Preferment',
  'oven-floor': 'Oven floor',
  core: 'Core',
  fridge: 'Fridge',
  serving: 'Serving',
}

const masses: Record<EventOf<'mass'>['when'], string> = {
  in: 'Mass into the oven',
  out: 'Mass out of the oven',
  cooled: 'Cooled mass',
}

const sizes: Record<EventOf<'size'>['what'], string> = {
  'height-in': 'Height into the oven',
  'height-out': 'Height out of the oven',
  volume: 'Volume',
}

/** What a temperature is of, as it is pressed and read: "Dough", "Oven floor". */
export function temperatureName(of: EventOf<'temperature'>['of']): string {
  return temperatures[of]
}

/** What was worked in: "bench flour", "water from wet hands", "oil". */
export function workedInName(what: EventOf<'worked-in'>['what']): string {
  return workedIn[what]
}

/** A step and which of its repeats: "Fold 2 of 3", or the bare name when it is done once. */
export function stepText(plan: Pick<Plan, 'steps'>, stepId: string, repeat: number): string {
  const step = plan.steps.find((each) => each.id === stepId)
  if (!step) return 'A step'
  if (repeat > step.repeats) return `${step.name} ${repeat}, one more than planned`
  return step.repeats > 1 ? `${step.name} ${repeat} of ${step.repeats}` : step.name
}

/**
 * One line of the log in a baker's words, without saying which batch or piece it is about. A face that shows another unit
 * hands in how it writes a temperature.
 */
export function eventText(
  event: Event,
  plan: Pick<Plan, 'formula' | 'responses' | 'sharedDoses' | 'steps'>,
  degrees: (celsius: number) => string = plainDegrees,
): string {
  switch (event.kind) {
    case 'weighed':
      return weighedText(event, plan)
    case 'worked-in':
      return `${plainMass(event.grams)} of ${workedIn[event.what]} worked in`
    case 'temperature':
      return `${temperatures[event.of]} ${degrees(event.celsius)}`
    case 'step-started':
      return `${stepText(plan, event.stepId, event.repeat)} begun`
    case 'hands-off':
      return `${stepText(plan, event.stepId, event.repeat)}: hands off`
    case 'step-skipped':
      return `${stepText(plan, event.stepId, event.repeat)} skipped`
    case 'step-stopped':
      return `${stepText(plan, event.stepId, event.repeat)} done`
    case 'bake-in':
    case 'bake-out':
      return ovenText(event, plan)
    case 'step-added':
      return `One more asked for: ${stepText(plan, event.stepId, event.repeat)}`
    case 'wait-changed':
      return `${stepText(plan, event.stepId, event.repeat)}: ${changedWaitText(event.moreSeconds)}`
    case 'folded':
      return `${stepText(plan, event.stepId, event.repeat)}: ${countText(event.folds, 'fold')}`
    case 'rise':
      return `Risen by ${plainNumber(event.percent)} %`
    case 'measured':
      return measuredText(event, plan)
    case 'mass':
      return `${masses[event.when]} ${plainMass(event.grams)}${event.topped ? ', topped' : ''}`
    case 'size':
      return `${sizes[event.what]} ${plainNumber(event.value)} ${event.what === 'volume' ? 'mL' : 'mm'}`
    case 'failure':
      return `Failure: ${failureText(event.what)}${event.note ? `, ${event.note}` : ''}`
    case 'note':
      return event.text
    case 'photo':
      return `${event.caption ? `Photo: ${event.caption}` : 'Photo'}${event.widthMillimetres === undefined ? '' : `, ${plainNumber(event.widthMillimetres / 10)} cm wide`}`
    case 'tasting-closed':
      return `Tasting closed early: ${event.reason}`
    case 'peeked':
      return event.reason ? `Looked behind the codes: ${event.reason}` : 'Looked behind the codes'
    case 'unsealed':
      return event.lost ? `Ended without knowing which was which: ${event.lost}` : 'Unsealed'
    case 'plates-shuffled':
      return `Plates of round ${event.round} shuffled`
    default:
      return plainTexts[event.kind]
  }
}

const plainTexts = {
  void: 'Taken back',
  lock: 'Expectation and main response locked',
  served: 'Served',
  present: 'At the table',
  declined: 'Declined to taste',
  left: 'Left the tasting',
  'allergens-heard': 'Heard of the allergens',
  'seat-left': 'Left the ballot on the device',
  'plates-turned': 'Plates turned over: no score is changed from here on',
  'findings-looked': 'Findings looked at',
  'device-taken': 'Device taken from the table, all covered',
  browned: 'First browning',
  'made-again': 'Made again',
  'day-closed': 'Day closed, what is missing left so',
} as const

/** A wait that was changed to match another dough: "to wait 12 min longer". */
function changedWaitText(moreSeconds: number): string {
  if (moreSeconds === 0) return 'to wait as planned'
  const way = moreSeconds > 0 ? 'longer' : 'shorter'
  return `to wait ${durationText(Math.abs(moreSeconds))} ${way}`
}

/** “Into the oven”, with how many pieces of a dough that is baked whole; of several bakes with which. */
function ovenText(event: EventOf<'bake-in' | 'bake-out'>, plan: Pick<Plan, 'steps'>): string {
  const { kind, stepId, repeat = 1, pieceIds = [] } = event
  const way = kind === 'bake-in' ? 'Into the oven' : 'Out of the oven'
  const said = pieceIds.length > 1 ? `${way}, ${pieceIds.length} pieces` : way
  const bakes = plan.steps.filter((step) => step.kind === 'bake')
  const several = bakes.length > 1 || bakes.some(({ repeats }) => repeats > 1)
  return several && stepId !== undefined
    ? `${stepText(plan, stepId, repeat)}: ${said.toLowerCase()}`
    : said
}

function weighedText(
  { ingredientId, prefermentId, grams }: EventOf<'weighed'>,
  plan: Pick<Plan, 'formula' | 'sharedDoses'>,
): string {
  const dose = plan.sharedDoses.find((each) => each.ingredientId === ingredientId)
  const name = ingredientName(plan, ingredientId)
  const what = dose ? doseName(name, dose.by) : name
  const into = prefermentId === undefined ? '' : ` into the ${ingredientName(plan, prefermentId)}`
  return asSentenceStart(`${what} ${plainMass(grams)}${into}`)
}

function measuredText(event: EventOf<'measured'>, plan: Pick<Plan, 'responses'>): string {
  const response = plan.responses.find((each) => each.id === event.responseId)
  if (!response) return plainNumber(event.value)
  const unit = response.scale.kind === 'measured' ? response.scale.unitOfMeasure : ''
  return `${response.name} ${withUnit(plainNumber(event.value), unit)}`
}
