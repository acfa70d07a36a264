import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { usePlanPage } from '@/app/plan/page/plan-page-context.ts'
import { dayMoments, daySentence, offSentence } from '@/core/wording/plan/clock-day-text.ts'
import { nightSentence } from '@/core/wording/plan/clock-plan-text.ts'
import { ClockFigure } from './clock-figure.tsx'
import styles from './clock-page.module.css'
import { doughName } from './day-verdict.tsx'
import { useDayFound } from './found-day.tsx'
import { OtherDays } from './other-days.tsx'

/** The day in the plan: its sentence, its picture by dough and by hands, and the way to its page. */
export function DaySection() {
  const found = useDayFound()
  const trialId = usePlanPage((page) => page.plan.trialId)
  return (
    <Section id="plan-clock" title="The day, by the clock">
      {found.state === 'found' ? (
        <InPlan found={found} />
      ) : (
        <p>
          {found.state === 'undealt'
            ? 'As soon as a session can be dealt from the plan, its day stands here.'
            : found.state === 'failed'
              ? 'The day could not be worked out. Load the page anew; nothing of the plan is lost.'
              : 'Laying the day…'}
        </p>
      )}
      <div className={styles.presses}>
        <LinkButton href={`#/trial/${trialId}/plan/clock`}>
          The whole day, times and paper
        </LinkButton>
      </div>
    </Section>
  )
}

function InPlan({ found }: { found: Extract<ReturnType<typeof useDayFound>, { state: 'found' }> }) {
  const { day, plan, session } = found
  const moments = dayMoments(day.originAt, plan.zone)
  const sentence = daySentence(day, plan)
  const nameOf = (batchId: string) => doughName(plan, session, batchId)
  const off = offSentence(day.waits, nameOf)
  const split = day.clock && nightSentence(day.clock, plan, nameOf)
  return (
    <>
      <p>{sentence}</p>
      <div role="img" aria-label={`The day drawn by dough, hands and oven. ${sentence}`}>
        <ClockFigure picture={day.picture} levels={plan.levels} moments={moments} />
      </div>
      {off ? (
        <p className={styles.off}>
          <span aria-hidden="true">◆</span> {off}
        </p>
      ) : null}
      {split ? (
        <p className={styles.off}>
          <span aria-hidden="true">◆</span> {split}
        </p>
      ) : null}
      <ErrorBoundary what="days that differ in kind" of={plan}>
        <OtherDays plan={plan} session={session} />
      </ErrorBoundary>
    </>
  )
}
