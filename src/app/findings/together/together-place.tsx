import { useLiveQuery } from 'dexie-react-hooks'
import { useContext, useMemo, useState } from 'react'
import { Link, useLocation } from 'wouter'
import styles from '@/app/findings/findings.module.css'
import { Switch } from '@/app/kit/field/switch.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { LessonCover } from '@/app/kit/page/lesson-cover.tsx'
import { LessonsContext } from '@/app/kit/page/lessons-context.ts'
import { PageHeading } from '@/app/kit/page/page-heading.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { FileButton } from '@/app/kit/press/file-button.tsx'
import { useServices } from '@/app/services/services.ts'
import { coveredTrials } from '@/core/lesson/covered-trials.ts'
import { mustSayLook } from '@/core/seal/must-say-look.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { fileTroublesMend, fileTroubleText } from '@/core/wording/files/file-trouble-text.ts'
import { factorKindName } from '@/core/wording/plan/factor-kind-name.ts'
import type { Summary } from '@/notebook/summary-record.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'
import { TogetherFound } from './together-found.tsx'
import { toldQuestion } from './told-question.ts'

/** A trial of somebody else's, looked at here alone: it is not taken into the notebook. */
interface FromFile {
  key: number
  name: string
  whole: WholeTrial
}

/** A file that was not read in, with why. */
interface RefusedFile {
  key: number
  name: string
  troubles: FileTrouble[]
}

let keys = 0

/** Trials of one factor as one answer: those of the notebook that are chosen, named in the address, and files from elsewhere. */
export function TogetherPlace({ chosen = '' }: { chosen?: string | undefined }) {
  const { notebook } = useServices()
  const lessons = useContext(LessonsContext)
  const [, go] = useLocation()
  const ids = useMemo(() => chosen.split(',').filter(Boolean), [chosen])
  const [files, setFiles] = useState<readonly FromFile[]>([])
  const [refused, setRefused] = useState<readonly RefusedFile[]>([])
  const book = useLiveQuery(() => notebook.summaries({ archived: true }), [notebook])
  const own = useLiveQuery(async () => {
    const found = await Promise.all(ids.map((id) => notebook.wholeTrial(id)))
    return found.filter((whole) => whole !== undefined)
  }, [notebook, ids])
  const trials = useMemo(() => [...(own ?? []), ...files.map(({ whole }) => whole)], [own, files])
  if (!book || !own) return <Progress label="Opening the trials" done={null} />

  const choose = (next: readonly string[]) => go(`/together/${next.join(',')}`, { replace: true })
  const readIn = async (given: readonly File[]) => {
    const { readTrialFile } = await import('@/trial-file/read-trial-file.ts')
    setRefused([])
    for (const file of given) {
      const read = readTrialFile(await file.text())
      if (read.ok)
        setFiles((before) => [...before, { key: ++keys, name: file.name, whole: read.whole }])
      else
        setRefused((before) => [
          ...before,
          { key: ++keys, name: file.name, troubles: read.troubles },
        ])
    }
  }
  const [inLesson] = coveredTrials(
    trials.map(({ trial }) => trial.id),
    lessons,
  )
  const unlooked = trials.filter(mustSayLook)

  return (
    <>
      <PageHeading>Trials together</PageHeading>
      <p className={styles.words}>
        Trials of one factor, each session of each a block of its own, as one answer: your own
        repeats, and trials that others made in their kitchens and sent as files.
      </p>
      <Section title="Which trials">
        <Candidates book={book} ids={ids} factorKind={kindOf(trials)} onIds={choose} />
        {files.map(({ key, name, whole }) => (
          <p key={key}>
            {toldQuestion(whole)} ({name}, from a file){' '}
            <Button
              kind="quiet"
              size="small"
              label={`Take away: ${name}`}
              onPress={() => setFiles(files.filter((other) => other.key !== key))}
            >
              Take away
            </Button>
          </p>
        ))}
        {refused.map(({ key, name, troubles }) => (
          <ErrorNote key={key} title={`${name} was not read in.`}>
            <ul>
              {troubles.slice(0, 5).map((trouble) => (
                <li key={JSON.stringify(trouble)}>{fileTroubleText(trouble)}</li>
              ))}
            </ul>
            <p>{fileTroublesMend(troubles)}</p>
          </ErrorNote>
        ))}
        <div className={styles.presses}>
          <FileButton accept=".json,application/json" multiple onFiles={readIn}>
            Add a trial from a file
          </FileButton>
        </div>
      </Section>
      {inLesson !== undefined ? (
        <LessonCover trialId={inLesson} />
      ) : unlooked.length > 0 ? (
        <NotLooked trials={unlooked} ownIds={ids} />
      ) : trials.length < 2 ? (
        <p className={styles.words} role="status">
          {trials.length === 0 ? 'Choose two trials or more.' : 'Choose one more, or add a file.'}
        </p>
      ) : (
        <TogetherFound trials={trials} />
      )}
    </>
  )
}

/** Looking at a trial before its last planned session is recorded in its Findings; here it would not be. */
function NotLooked({
  trials,
  ownIds,
}: {
  trials: readonly WholeTrial[]
  ownIds: readonly string[]
}) {
  return (
    <ErrorNote title="Before the last planned session">
      {trials.map((whole) => (
        <p key={whole.trial.id}>
          Not all planned sessions of “{toldQuestion(whole)}” are tasted, and a look is recorded.{' '}
          {ownIds.includes(whole.trial.id) ? (
            <>
              <Link href={`/trial/${whole.trial.id}/findings`}>Look at its findings first</Link>, or
              take it away.
            </>
          ) : (
            'It came in a file, where no look can be recorded: take it away, and ask for it anew once all are tasted.'
          )}
        </p>
      ))}
    </ErrorNote>
  )
}

const kindOf = ([first]: readonly WholeTrial[]) =>
  first ? planInForce(first).factor.acts.on : null

interface CandidatesProps {
  book: readonly Summary[]
  ids: readonly string[]
  /** The kind of factor that is looked at; null while nothing is chosen. */
  factorKind: string | null
  onIds: (ids: readonly string[]) => void
}

function Candidates({ book, ids, factorKind, onIds }: CandidatesProps) {
  const tasted = book.filter(({ sealed, sessionsDone }) => !sealed && sessionsDone > 0)
  const fitting = tasted.filter(
    (line) => ids.includes(line.trialId) || factorKind === null || line.factorKind === factorKind,
  )
  const others = tasted.length - fitting.length
  return (
    <>
      {fitting.map((line) => (
        <Switch
          key={line.trialId}
          label={line.question}
          hint={`${line.factorName}; ${line.levels.map(({ label }) => label).join(', ')} ${line.unitOfMeasure}`}
          on={ids.includes(line.trialId)}
          onSwitch={(on) =>
            onIds(on ? [...ids, line.trialId] : ids.filter((id) => id !== line.trialId))
          }
        />
      ))}
      {tasted.length === 0 ? <p>No trial of this notebook is tasted and open yet.</p> : null}
      {others > 0 && factorKind !== null ? (
        <p className={styles.words}>
          {others === 1 ? 'One other trial is' : `${others} other trials are`} not about{' '}
          {factorKindName(factorKind).toLowerCase()}.
        </p>
      ) : null}
    </>
  )
}
