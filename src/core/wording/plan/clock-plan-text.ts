import { isPartedByMethod, oneTasting } from '@/core/clock-plan/baked-together.ts'
import { movedSeconds } from '@/core/clock-plan/mended-plan.ts'
import type { ClockPlan } from '@/core/clock-plan/plan-the-day.ts'
import { type Mend, type MomentMend, shownMends } from '@/core/clock-plan/search/mend.ts'
import type { Culprit } from '@/core/clock-plan/search/mends.ts'
import { mostRung } from '@/core/clock-plan/search/solve-day.ts'
import type { TriedMarks } from '@/core/clock-plan/tried-marks.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, listText } from '@/core/wording/words/list-text.ts'

const resourceNames: Record<string, string> = {
  hands: 'the hands',
  oven: 'the oven’s places',
  mixer: 'the mixer',
  fridge: 'the room in the fridge',
  baker: 'the one person who does a step for all doughs',
  [oneTasting]: 'bakes that no night may part, since they are tasted together',
}

/** How good the plan is and how sure: its length, its waits, how equal the lines are, and whether a better one could exist. */
export function clockPlanSentences(clock: ClockPlan, plan: Plan): string[] {
  const { spanSeconds, spreadRung, proved, boundSeconds, night } = clock
  const all = proved.rung && proved.spread && proved.span
  return [
    `The day takes ${durationText(spanSeconds)}.`,
    ...waitSentences(clock, plan),
    // What a night parts is equal on each side of it at the most.
    spreadRung === 0 || night !== null
      ? ''
      : spreadRung <= 4
        ? `The doughs are equal in age at baking and in minutes from the oven to within ${quarters(spreadRung)} of what is harmless.`
        : `The doughs differ in age at baking, or in minutes from the oven, by ${times(spreadRung)} what is harmless: the fairness check says by how much.`,
    all
      ? 'No better plan exists.'
      : `Good, not proved best: no day shorter than ${durationText(boundSeconds)} can be as fair.`,
  ].filter((sentence) => sentence !== '')
}

/**
 * A night that parts the bakes of one tasting, in one sentence: which doughs, what it costs, and the mend that joins them; null
 * where none does. `doughOf` names a dough.
 */
export function nightSentence(
  { night, mends }: Pick<ClockPlan, 'night' | 'mends'>,
  plan: Plan,
  doughOf: (batchId: string) => string,
): string | null {
  if (!night) return null
  const { beforeBatchIds, afterBatchIds, apartSeconds } = night
  const both = beforeBatchIds.some((id) => afterBatchIds.includes(id))
  const named = (ids: readonly string[]) => listText(ids.map(doughOf))
  const parts = both
    ? 'some pieces are baked before a night, some after it'
    : `${named(beforeBatchIds)} ${isOrAre(beforeBatchIds)} baked before a night, ${named(afterBatchIds)} after it`
  const cost =
    plan.serving === 'rested'
      ? `what is baked first is ${durationText(apartSeconds)} older at the tasting than what is baked last`
      : `people taste twice, ${durationText(apartSeconds)} apart`
  const [join] = shownMends(mends.filter(({ mend }) => mend !== 'wider-waits'))
  const mended = join
    ? `all are baked in one go if you ${mendWords(join, plan)}`
    : isPartedByMethod(plan)
      ? 'doughs mixed apart would meet at the oven'
      : 'no single change lets all be baked in one go'
  return `${asSentenceStart(parts)}: ${cost}; ${mended}.`
}

const isOrAre = ({ length }: { length: number }) => (length === 1 ? 'is' : 'are')

function waitSentences({ fits, rung, stepRungs }: ClockPlan, plan: Plan): string[] {
  if (rung === 1 || stepRungs.length === 0)
    return ['Every wait is within a quarter of its tolerance.']
  const told = fits ? stepRungs : stepRungs.filter((one) => one.rung > mostRung)
  const named = told.map(({ step, isOut, rung: own }) => {
    const name = isOut
      ? 'once out of the oven'
      : (plan.steps.find(({ id }) => id === step)?.name ?? step)
    return `${name} (${own <= mostRung ? quarters(own) : `${times(own)} its tolerance`})`
  })
  if (fits) return [`Every wait is within its tolerance; furthest off: ${listText(named)}.`]
  return [
    `Nothing keeps all waits within their tolerance. In the least bad plan they are off at ${listText(named)}.`,
  ]
}

const quarters = (rung: number) =>
  ['', 'a quarter', 'half', 'three quarters', 'all'][Math.min(4, rung)] ?? 'all'
const times = (rung: number) => `${plainNumber(rung / 4)} times`

/** How the day stands marks that come sooner or later than expected; `doughOf` names a dough. */
export function marksSentence(
  { share, tries, freeSeconds }: TriedMarks,
  doughOf: (batchId: string) => string,
): string {
  const percent = `${Math.round(share * 100)} %`
  const free =
    freeSeconds > 0
      ? `Hands stay free for up to ${durationText(freeSeconds)} after each expected mark. `
      : ''
  const broken = tries.filter(({ rung }) => rung === null)
  if (broken.length === 0)
    return `${free}Marks may come ${percent} sooner or later, all together or one dough’s alone: every wait still holds.`
  const ways = broken.map(
    ({ batchId, comes }) => `${batchId === null ? 'all' : doughOf(batchId)} ${comes}`,
  )
  return `${free}If marks come ${percent} off, a wait passes its tolerance with ${listText(ways, 'or')}; the Bench then says whether to go on or to wait.`
}

/** What collides: "What collides: the hands, the hours in which nobody works and the time you eat." */
export function culpritSentence(culprits: readonly Culprit[], { day }: Pick<Plan, 'day'>): string {
  const others = {
    blocks: 'the hours in which nobody works',
    window: day?.fixed?.what === 'eat' ? 'the time you eat' : 'the time you start',
    orders: 'the order of the doughs and of the oven',
    log: 'what was done already',
  }
  const names = culprits.map((one) =>
    one.what === 'resource' ? (resourceNames[one.resource] ?? one.resource) : others[one.what],
  )
  if (names.length === 0) return 'The waits themselves leave no plan.'
  return `What collides: ${listText(names)}.`
}

/** A mend in a baker's words, as a sentence. */
export function mendText(mend: Mend, plan: Plan): string {
  return `${asSentenceStart(mendWords(mend, plan))}.`
}

function mendWords(mend: Mend, plan: Plan): string {
  switch (mend.mend) {
    case 'later-end':
    case 'earlier-end':
    case 'later-start':
    case 'earlier-start':
      return movedWords(mend)
    case 'one-more':
      return (
        {
          hands: 'ask a helper in',
          oven: 'bake one more piece at a time',
          mixer: 'use a second mixer',
          fridge: 'make room for one more in the fridge',
          baker: 'let a second person do for some doughs what one was to do for all',
        }[mend.resource] ?? `have one more of ${mend.resource}`
      )
    case 'same-for-all': {
      const name = plan.steps.find(({ id }) => id === mend.step)?.name ?? mend.step
      const way = mend.seconds > 0 ? 'longer' : 'shorter'
      return `wait ${durationText(Math.abs(mend.seconds))} ${way} after ${name}, for all doughs`
    }
    case 'free-oven-order':
      return 'bake in another order than was dealt, such as dough order, and reverse it next time'
    case 'wider-waits':
      return `allow the waits ${times(mend.rung)} their tolerance, as this plan does`
  }
}

/** Another moment: "eat 2 h 15 min later". */
function movedWords(mend: MomentMend): string {
  const moved = movedSeconds(mend)
  const what = mend.mend.endsWith('-end') ? 'eat' : 'start'
  return `${what} ${durationText(Math.abs(moved))} ${moved > 0 ? 'later' : 'earlier'}`
}
