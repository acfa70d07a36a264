import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useShownOfClock } from '@/app/kit/time/use-ticking.ts'
import { useServices } from '@/app/services/services.ts'
import type { Departure } from '@/core/session/departure.ts'
import { isMatchable, matchOf } from '@/core/session/matching/match.ts'
import type { StepRun } from '@/core/session/step-runs.ts'
import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import { departureText } from '@/core/wording/bench/departure-text.ts'
import { departureEffectText, matchText } from '@/core/wording/bench/match-text.ts'

/**
 * What the log shows to have gone otherwise than planned so far, newest first: said quietly, kept for the report, nobody's fault;
 * what it does to the comparison, and a press that gives the others the same where they still can have it.
 */
export function OffPlan({ runs }: { runs: readonly StepRun[] }) {
  const { whole, session, covered } = useBench()
  const found = departedInSession(whole, session).filter(
    ({ what }) => !covered || what !== 'weight',
  )
  if (found.length === 0) return null
  return (
    <Section title="Otherwise than planned" aside={`${found.length} so far`}>
      <ul className={styles.offPlan}>
        {found.toReversed().map((departure) => (
          <li key={JSON.stringify(departure)}>
            <OneDeparture departure={departure} runs={runs} />
          </li>
        ))}
      </ul>
    </Section>
  )
}

function OneDeparture({ departure, runs }: { departure: Departure; runs: readonly StepRun[] }) {
  const { session, plan: whole, log, covered } = useBench()
  // Covered, a dough goes by its letter alone.
  const plan = covered ? { ...whole, levels: [] } : whole
  const { now } = useServices()
  // Whether others can still be matched moves by minutes; the press looks again.
  useShownOfClock(now, (at) => Math.floor(at / 60_000))
  const match = isMatchable(departure) ? matchOf(departure, runs, now()) : null
  return (
    <>
      <p>{departureText(departure, plan, session)}</p>
      <p className={styles.quiet}>{departureEffectText(departure, match, session)}</p>
      {match && match.press.length > 0 && isMatchable(departure) ? (
        <Button
          size="bench"
          means={`match/${JSON.stringify(match.press)}`}
          onPress={() => log(...match.press)}
        >
          {matchText(departure, match, plan, session)}
        </Button>
      ) : null}
    </>
  )
}
