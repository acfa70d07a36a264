import type { ReactNode } from 'react'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { fileTroublesMend, fileTroubleText } from '@/core/wording/files/file-trouble-text.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'
import styles from './home.module.css'

const most = 8

/** Why a file was refused, trouble by trouble, each with its place in the file. */
export function ImportTroubles({
  fileName,
  troubles,
  close,
}: {
  fileName: string
  troubles: readonly FileTrouble[]
  /** The press that puts this away; none where it goes with the page. */
  close?: ReactNode
}) {
  const left = troubles.length - most
  return (
    <ErrorNote title={`${fileName} was not read in. The notebook is as it was.`} action={close}>
      <ul className={styles.troubles}>
        {troubles.slice(0, most).map((trouble) => (
          <li key={JSON.stringify(trouble)}>{fileTroubleText(trouble)}</li>
        ))}
      </ul>
      {left > 0 ? <p>And {left} more of the kind.</p> : null}
      <p>{fileTroublesMend(troubles)}</p>
    </ErrorNote>
  )
}
