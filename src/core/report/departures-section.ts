import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { departureText } from '@/core/wording/bench/departure-text.ts'
import type { ReportSection } from './report-block.ts'

/** What was done differently from the plan, session by session, as the log tells it. */
export function departuresSection(whole: WholeTrial): ReportSection {
  const items = whole.sessions
    .toSorted((a, b) => a.number - b.number)
    .flatMap((session) => {
      const plan = planOfSession(whole, session)
      return departedInSession(whole, session).map(
        (departure) =>
          `Session ${session.number}. ${departureText(departure, plan, session, { levels: true })}`,
      )
    })
  return {
    id: 'departures',
    title: 'Departures from the plan',
    blocks: [
      items.length === 0 ? { kind: 'text', text: 'The log shows none.' } : { kind: 'list', items },
    ],
  }
}
