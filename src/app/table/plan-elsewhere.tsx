import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { changeSentence } from '@/core/wording/plan/plan-sentences.ts'
import { dayTime } from '@/core/wording/words/day-time.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import styles from './table.module.css'

interface PlanElsewhereProps {
  trialId: string
  /** Whether this device opened the table; else it helps at it. */
  own: boolean
}

/**
 * What stands in the place of the plan where another device of the table changes it: how it is now, under the question in the head,
 * following each change that is kept there; and the way to the table.
 */
export function PlanElsewhere({ trialId, own }: PlanElsewhereProps) {
  const { now } = useServices()
  const plan = planInForce(useWholeTrial())
  const { revision, at, zone, steps, plannedSessions } = plan
  const sentence = changeSentence(plan).map((piece) =>
    typeof piece === 'string' ? piece : piece.value,
  )
  return (
    <>
      <PageHeading>Plan</PageHeading>
      <Section title="The plan is changed on another device">
        <div className={styles.page}>
          <p className={styles.lead}>{sentence.join('')}</p>
          <p>
            {asSentenceStart(countText(steps.length, 'step'))},{' '}
            {countText(plannedSessions, 'session')}. Revision {revision}, changed{' '}
            {dayTime(at, now(), zone)}.
          </p>
          <p className={styles.soft}>
            {own
              ? 'You handed it over at the open table, and take it back there. Each change that is kept shows here by itself.'
              : 'Each change that is kept there shows here by itself. The baker can hand the plan to this device at the open table.'}
          </p>
          <div className={styles.actions}>
            <LinkButton href={own ? `#/table/${trialId}` : '#/join'} kind="primary">
              The open table
            </LinkButton>
            <LinkButton href={`#/trial/${trialId}/bench`}>To the bench</LinkButton>
          </div>
        </div>
      </Section>
    </>
  )
}
