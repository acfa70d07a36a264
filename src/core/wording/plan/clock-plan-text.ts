import type { ClockPlan } from '@/core/clock-plan/plan-the-day.ts'
import type { Culprit, Mend } from '@/core/clock-plan/search/mends.ts'
import type { TriedMarks } from '@/core/clock-plan/tried-marks.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { listText } from '@/core/wording/words/list-text.ts'

const resourceNames: Record<string, string> = {
  hands: 'the hands',
  oven: 'the oven’s places',
  mixer: 'the mixer',
}

/** How good the plan is and how sure: its length, its waits, how equal the lines are, and whether a better one could exist. */
export function clockPlanSentences(clock: ClockPlan, plan: Plan): string[] {
  const { spanSeconds, spreadRung, proved, boundSeconds } = clock
  const all = proved.rung && proved.spread && proved.span
  return [
    `The day takes ${durationText(spanSeconds)}.`,
    ...waitSentences(clock, plan),
    spreadRung === 0
      ? ''
      : spreadRung <= 4
        ? `The doughs are equal in age at baking and in minutes from the oven to within ${quarters(spreadRung)} of what is harmless.`
        : `The doughs differ in age at baking, or in minutes from the oven, by ${times(spreadRung)} what is harmless: the fairness check says by how much.`,
    all
      ? 'No better plan exists.'
      : `Good, not proved best: no day shorter than ${durationText(boundSeconds)} can be as fair.`,
  ].filter((sentence) => sentence !== '')
}

function waitSentences({ fits, rung, stepRungs }: ClockPlan, plan: Plan): string[] {
  if (rung === 1) return ['Every wait is within a quarter of its tolerance.']
  const named = stepRungs.map(({ step, rung: own }) => {
    const name = plan.steps.find(({ id }) => id === step)?.name ?? step
    return `${name} (${own <= 4 ? quarters(own) : `${times(own)} its tolerance`})`
  })
  if (fits) return [`Every wait is within its tolerance; furthest off: ${listText(named)}.`]
  return [`Nothing keeps all waits within their tolerance. Least bad, off at: ${listText(named)}.`]
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

/** What collides: "It is the hands and the oven’s places that collide." */
export function culpritSentence(culprits: readonly Culprit[]): string {
  const names = culprits.map((one) => {
    if (one.what === 'resource') return resourceNames[one.resource] ?? one.resource
    const others = { blocks: 'the quiet hours', window: 'the day’s begin or end' }
    return one.what === 'orders'
      ? 'the dealt orders'
      : one.what === 'log'
        ? 'what was done already'
        : others[one.what]
  })
  if (names.length === 0) return 'The waits themselves leave no plan.'
  return `What collides: ${listText(names)}.`
}

/** A mend in a baker's words. */
export function mendText(mend: Mend, plan: Plan): string {
  switch (mend.mend) {
    case 'later-end':
      return `End ${durationText(Math.ceil(mend.seconds / 300) * 300)} later.`
    case 'one-more':
      return (
        {
          hands: 'Ask a helper in.',
          oven: 'Bake one more piece at a time.',
          mixer: 'Use a second mixer.',
        }[mend.resource] ?? `Have one more of ${mend.resource}.`
      )
    case 'same-for-all': {
      const name = plan.steps.find(({ id }) => id === mend.step)?.name ?? mend.step
      const way = mend.seconds > 0 ? 'longer' : 'shorter'
      return `Wait ${durationText(Math.abs(mend.seconds))} ${way} after ${name}, for all doughs.`
    }
    case 'free-oven-order':
      return 'Bake in another order than was dealt, such as dough order, and reverse it next time.'
    case 'wider-waits':
      return `Allow the waits ${times(mend.rung)} their tolerance, as this plan does.`
  }
}
