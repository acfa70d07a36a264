import { useEffect } from 'react'
import { useStore } from 'zustand'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Progress } from '@/app/kit/page/progress.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { forgetLongWork, type LongWorkEnd, longWork } from '@/app/services/long-work.ts'
import { sealedInFileText } from '@/core/wording/files/backup-text.ts'
import { keepingFailureText } from '@/core/wording/files/keeping-failure-text.ts'
import { RestoreReport } from './restore-report.tsx'
import { WouldRestore } from './would-restore.tsx'

/** How far a backup or restore is, and how it ended. */
export function BackupDesk() {
  const running = useStore(longWork, (state) => state.running)
  const end = useStore(longWork, (state) => state.end)
  useEffect(() => () => forgetLongWork(), [])
  return (
    <>
      {running ? (
        <Progress
          label={progressText(running)}
          done={running.total === 0 ? null : running.done / running.total}
          onStop={running.stop}
        />
      ) : null}
      {end ? <LongWorkEnded end={end} /> : null}
      <RestoreReport
        running={running?.kind === 'restore'}
        own={end?.is === 'read' && end.outcome.ok ? end.outcome.record : null}
      />
    </>
  )
}

const doing: Readonly<Record<string, string>> = {
  ...{ backup: 'Backing up', restore: 'Restoring', look: 'Looking into the backup' },
}

const progressText = ({ kind, done, total }: { kind: string; done: number; total: number }) =>
  `${doing[kind] ?? ''}${total === 0 ? '' : `: ${done} of ${total} trials`}`

function LongWorkEnded({ end }: { end: LongWorkEnd }) {
  if (end.is === 'read') return <BackupRefused outcome={end.outcome} file={end.file} />
  if (end.is === 'saved') return <BackupSaved {...end} />
  if (end.is === 'would') return <WouldRestore end={end} />
  if (end.is === 'stopped')
    return (
      <Notice kind="know" title="Stopped">
        {end.kind === 'look' ? 'Nothing came in' : 'No file was saved'}; the notebook is as it was.
      </Notice>
    )
  const { title, mend } = keepingFailureText(end.reason)
  const what = {
    backup: 'The backup was not made.',
    restore: 'The restore did not go on.',
    look: 'The backup could not be looked into.',
  }[end.kind]
  return (
    <ErrorNote title={what}>
      <p>
        {title} {mend}
      </p>
      {end.reason === null ? (
        <p>
          The program says: <q>{end.detail}</q>
        </p>
      ) : null}
    </ErrorNote>
  )
}

type Saved = Extract<LongWorkEnd, { is: 'saved' }>

function BackupSaved({ trials, sealed, damaged }: Saved) {
  const words = `${trials === 1 ? '1 trial is' : `${trials} trials are`} in the file, with kitchen and photos. Keep it somewhere else than on this device.${sealed === 0 ? '' : ` ${sealedInFileText(sealed)}`}`
  if (damaged === 0)
    return (
      <Notice kind="know" title="Backed up">
        {words}
      </Notice>
    )
  return (
    <ErrorNote title={`${damaged === 1 ? '1 trial' : `${damaged} trials`} could not be read.`}>
      {words} What could not be read is not in it and stays in the notebook as it is.
    </ErrorNote>
  )
}

type ReadEnd = Extract<LongWorkEnd, { is: 'read' }>

function BackupRefused({ outcome, file }: Pick<ReadEnd, 'outcome' | 'file'>) {
  if (outcome.ok) return null
  return (
    <ErrorNote
      title={`${file} was not restored. The notebook is as it was.`}
      action={<Button onPress={forgetLongWork}>Close</Button>}
    >
      {outcome.reason === 'not-a-backup'
        ? 'It is not a backup of a notebook, or it was cut short. Choose the zip file that “Back up all” saved.'
        : `It was written by a newer version (${outcome.found}; this one reads up to ${outcome.known}). Update the program first.`}
    </ErrorNote>
  )
}
