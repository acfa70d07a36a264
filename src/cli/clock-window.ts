import { quietBlocks } from '@/core/clock-plan/quiet-hours.ts'
import type { Block, Window } from '@/core/clock-plan/search/day-problem.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { civilFromText, quietFromText } from '@/core/wording/plan/civil-text.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import type { CivilTime } from '@/core/wording/words/civil-time.ts'
import { processClock } from './process-clock.ts'
import { CommandTrouble } from './trouble.ts'
import type { Asked } from './verb.ts'

/** When the day may lie, with the nights without hands; `originAt` (UTC ms) is second 0, null where no day was named. */
export interface ClockWindow {
  originAt: number | null
  window: Window
  blocks: Block[]
}

const daySeconds = 86_400

/** What --eat, --start and --quiet ask for, by the plan's zone. A day so long may begin that long before people eat, and half again. */
export function clockWindow(asked: Asked, plan: Plan, spanSeconds: number): ClockWindow {
  const [eat, start, quiet] = ['eat', 'start', 'quiet'].map((name) => asked.text(name))
  if (eat !== undefined && start !== undefined)
    throw new CommandTrouble('--eat and --start: name one of the two; the other follows from it.')
  const named = eat ?? start
  if (named === undefined)
    return { originAt: null, window: { startSeconds: 0, startFixed: true }, blocks: [] }
  const civil = civilFromText(named)
  if (!civil)
    throw new CommandTrouble(
      `${eat === undefined ? '--start' : '--eat'} ${named}: write day and hour like 2026-12-05T18:00.`,
    )
  const at = civilMoment(civil, plan.zone, processClock)
  const reach = Math.ceil((spanSeconds * 1.5) / daySeconds + 1)
  const originAt = eat === undefined ? at : at - reach * daySeconds * 1000
  const endSeconds = reach * daySeconds
  return {
    originAt,
    window:
      eat === undefined
        ? { startSeconds: 0, startFixed: true }
        : { startSeconds: 0, endSeconds, endFixed: true },
    blocks: nights(plan, quiet ?? '23:00-6:30', originAt, reach + 2),
  }
}

function nights(plan: Plan, quiet: string, originAt: number, days: number): Block[] {
  if (quiet === 'none') return []
  const hours = quietFromText(quiet)
  if (!hours) throw new CommandTrouble(`--quiet ${quiet}: write hours like 23:00-6:30, or none.`)
  const first: CivilTime = processClock(originAt, plan.zone)
  return quietBlocks(hours, first, days, {
    ...{ originAt, hands: plan.pairsOfHands },
    momentOf: (day, minutes) =>
      civilMoment(
        { ...day, hour: Math.floor(minutes / 60), minute: minutes % 60 },
        plan.zone,
        processClock,
      ),
  })
}
