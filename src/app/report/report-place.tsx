import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import { useManner } from '@/app/kit/field/use-manner.ts'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { NotWorkedOut } from '@/app/kit/page/not-worked-out.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import type { ReportQuestion } from '@/app/worker/compute-report.ts'
import { useAnswer } from '@/app/worker/use-answer.ts'
import { sealed } from '@/core/seal/sealed.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { Downloads } from './downloads.tsx'
import styles from './report.module.css'
import { ReportView } from './report-view.tsx'

/** The Report place: one document that someone else can check, on screen, on paper and as files. */
export function ReportPlace() {
  const whole = useWholeTrial()
  if (sealed(whole))
    return (
      <>
        <PageHeading>Report</PageHeading>
        <EmptyState
          title="Still sealed"
          action={
            <LinkButton href={`#/trial/${whole.trial.id}/tasting`} kind="primary">
              Go to the tasting
            </LinkButton>
          }
        >
          There is no report while codes are sealed: it would give the levels away.
        </EmptyState>
      </>
    )
  return <ReportPages whole={whole} />
}

function ReportPages({ whole }: { whole: WholeTrial }) {
  const manner = useManner()
  const [appendix, setAppendix] = useState(false)
  const [printing, setPrinting] = useState(false)
  // Printed once the appendix stands in the page, its pictures drawn.
  useEffect(() => {
    if (!printing) return
    setPrinting(false)
    window.print()
  }, [printing])
  const question = useMemo((): ReportQuestion => ({ whole, manner }), [whole, manner])
  const found = useAnswer('report', question, (service, asked) => service.report(asked))
  // Drawn a part at a time, however long it is.
  const made = useDeferredValue(found.state === 'answered' ? found.answer : null)
  if (found.state === 'failed')
    return <NotWorkedOut title="The report could not be written" error={found.error} />
  if (!made) return <Progress label="Writing the report" done={null} />
  return (
    <>
      <div className={styles.heading}>
        <PageHeading>Report</PageHeading>
      </div>
      <ErrorBoundary what="the downloads" of={made}>
        <Downloads
          whole={whole}
          scores={made.scores}
          document={made.document}
          onPrint={(withAppendix) => {
            setAppendix(withAppendix)
            setPrinting(true)
          }}
        />
      </ErrorBoundary>
      <ReportView document={made.document} appendix={appendix} onAppendix={setAppendix} />
    </>
  )
}
