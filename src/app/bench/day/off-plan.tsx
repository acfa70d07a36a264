import styles from '@/app/bench/bench.module.css'
import { useBench } from '@/app/bench/bench-context.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { departedInSession } from '@/core/whole-trial/departed-in-session.ts'
import { departureText } from '@/core/wording/bench/departure-text.ts'

/** What the log shows to have gone otherwise than planned so far: said quietly, kept for the report, nobody's fault. */
export function OffPlan() {
  const { whole, session, plan } = useBench()
  const found = departedInSession(whole, session)
  if (found.length === 0) return null
  return (
    <Section title="Otherwise than planned" aside={`${found.length} so far`}>
      <ul className={styles.offPlan}>
        {found.map((departure) => (
          <li key={JSON.stringify(departure)}>{departureText(departure, plan, session)}</li>
        ))}
      </ul>
    </Section>
  )
}
