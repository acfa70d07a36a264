import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import { EmptyState } from '@/app/kit/page/empty-state.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { useWholeTrial } from '@/app/services/use-whole-trial.ts'
import type { FindingsAnswer } from '@/app/worker/findings-answer.ts'
import { useAnswer } from '@/app/worker/use-answer.ts'
import { useFindings } from '@/app/worker/use-findings.ts'
import type { ScoreTable } from '@/core/findings/table/score-table.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import type { ReportDocument } from '@/core/report/report-block.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { Downloads } from './downloads.tsx'
import styles from './report.module.css'
import { ReportView } from './report-view.tsx'

/** The Report place: one document that someone else can check, on screen, on paper and as files. */
export function ReportPlace() {
  const whole = useWholeTrial()
  const scored = useMemo(() => scoresOfTrial(whole, { unsealed: false }), [whole])
  if (!scored.ok)
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
  return <ReportPages whole={whole} scores={scored.scores} />
}

function written(
  whole: WholeTrial,
  scores: ScoreTable,
  { findings, next, curves }: FindingsAnswer,
  dataSha256: string | undefined,
): ReportDocument {
  const made = reportDocument({
    ...{ whole, scores, findings, next, curves, version: __APP_VERSION__ },
    ...(dataSha256 === undefined ? {} : { dataSha256 }),
    ...{ clock: civilTime, unsealed: false },
  })
  if (!made.ok) throw new Error('a trial that gives scores gives a report')
  return made.document
}

function ReportPages({ whole, scores }: { whole: WholeTrial; scores: ScoreTable }) {
  const dataSha256 = useTrialHash(whole)
  const [appendix, setAppendix] = useState(false)
  const [printing, setPrinting] = useState(false)
  // Printed once the appendix stands in the page, its pictures drawn.
  useEffect(() => {
    if (!printing) return
    setPrinting(false)
    window.print()
  }, [printing])
  const found = useFindings(scores, whole.trial.seed, null, whole)
  const answer = found.state === 'answered' ? found.answer : null
  // Written once for an answer, not again with every press.
  const text = useMemo(
    () => answer && written(whole, scores, answer, dataSha256),
    [whole, scores, answer, dataSha256],
  )
  // Written in one frame, drawn in the next.
  const made = useDeferredValue(text)
  if (found.state === 'failed')
    return (
      <ErrorNote title="The report could not be written">
        {found.error.message}. The trial is untouched; reload the page, and report it as a bug if it
        comes again.
      </ErrorNote>
    )
  if (!made) return <Progress label="Writing the report" done={null} />
  return (
    <>
      <div className={styles.heading}>
        <PageHeading>Report</PageHeading>
      </div>
      <ErrorBoundary what="the downloads" of={made}>
        <Downloads
          whole={whole}
          scores={scores}
          document={made}
          onPrint={(withAppendix) => {
            setAppendix(withAppendix)
            setPrinting(true)
          }}
        />
      </ErrorBoundary>
      <ReportView document={made} appendix={appendix} onAppendix={setAppendix} />
    </>
  )
}

/** SHA-256 of a trial's file, in hex; undefined until it is reckoned, and where the browser offers none (an address without https). */
function useTrialHash(whole: WholeTrial): string | undefined {
  const asked = useAnswer('hash', whole, (service, trial: WholeTrial) => service.hashOfFile(trial))
  if (asked.state !== 'answered' || asked.newer) return undefined
  return asked.answer ?? undefined
}
