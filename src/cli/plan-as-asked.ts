import type { DayWishes } from '@/core/trial/day-wishes.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { civilFromText, quietFromText } from '@/core/wording/plan/civil-text.ts'
import { civilMoment } from '@/core/wording/words/civil-moment.ts'
import { processClock } from './process-clock.ts'
import { CommandTrouble } from './trouble.ts'
import type { Asked } from './verb.ts'

/** The plan with what --eat, --start and --quiet ask of its day, by the plan's zone; without them, what it says itself. */
export function planAsAsked(asked: Asked, plan: Plan): Plan {
  const [eat, start, quiet] = ['eat', 'start', 'quiet'].map((name) => asked.text(name))
  if (eat !== undefined && start !== undefined)
    throw new CommandTrouble('--eat and --start: name one of the two; the other follows from it.')
  const named = eat ?? start
  if (named === undefined) {
    if (quiet !== undefined && !plan.day?.fixed)
      throw new CommandTrouble(
        '--quiet: name --eat or --start too; without a date no night lies in the day.',
      )
    return withQuiet(plan, quiet)
  }
  const civil = civilFromText(named)
  if (!civil)
    throw new CommandTrouble(
      `${eat === undefined ? '--start' : '--eat'} ${named}: write day and hour like 2026-12-05T18:00.`,
    )
  if (civil.year < 1971)
    throw new CommandTrouble(
      `${eat === undefined ? '--start' : '--eat'} ${named}: write a day from 1971 on.`,
    )
  const at = civilMoment(civil, plan.zone, processClock)
  const fixed = { what: eat === undefined ? ('start' as const) : ('eat' as const), at }
  const wishes: DayWishes = { ...plan.day, fixed }
  const usual = wishes.quiet ? undefined : '23:00-6:30'
  return withQuiet({ ...plan, day: wishes }, quiet ?? usual)
}

function withQuiet(plan: Plan, quiet: string | undefined): Plan {
  if (quiet === undefined) return plan
  const { quiet: _, ...others } = plan.day ?? {}
  if (quiet === 'none') return { ...plan, day: others }
  const hours = quietFromText(quiet)
  if (!hours) throw new CommandTrouble(`--quiet ${quiet}: write hours like 23:00-6:30, or none.`)
  if (hours.fromMinutes === hours.toMinutes)
    throw new CommandTrouble(
      `--quiet ${quiet}: it ends when it begins. Write hours like 23:00-6:30, or none.`,
    )
  return { ...plan, day: { ...others, quiet: hours } }
}
