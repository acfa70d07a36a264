import { useMemo } from 'react'
import { Section } from '@/app/kit/section.tsx'
import { departures } from '@/core/session/departures.ts'
import { departureText } from '@/core/wording/departure-text.ts'
import styles from './bench.module.css'
import { useBench } from './bench-context.ts'

/** What the log shows to have gone otherwise than planned so far: said quietly, kept for the report, nobody's fault. */
export function OffPlan() {
  const { whole, session, plan } = useBench()
  const found = useMemo(
    () =>
      departures({ session, plan, events: whole.events, kitchen: whole.kitchen }).map(
        (departure) => ({
          key: JSON.stringify(departure),
          text: departureText(departure, plan, session),
        }),
      ),
    [whole, session, plan],
  )
  if (found.length === 0) return null
  return (
    <Section title="Otherwise than planned" aside={`${found.length} so far`}>
      <ul className={styles.offPlan}>
        {found.map(({ key, text }) => (
          <li key={key}>{text}</li>
        ))}
      </ul>
    </Section>
  )
}
