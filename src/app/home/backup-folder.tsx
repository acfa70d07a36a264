import { useCallback, useEffect, useState } from 'react'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import { chooseFolder, foldersOffered, forgetFolder } from '@/app/services/backup-folder.ts'
import { type FolderState, keepFolder } from '@/app/services/keep-folder.ts'
import { useServices } from '@/app/services/services.ts'
import {
  folderOffer,
  folderText,
  folderTroubleText,
} from '@/core/wording/files/backup-folder-text.ts'
import { sealedInFileText } from '@/core/wording/files/backup-text.ts'
import { BackupDialog } from './backup-dialog.tsx'
import styles from './backup-folder.module.css'
import { dayText } from './day-text.ts'

/** A folder that the backup is kept in, where the browser lets one be chosen: how it stands, and what to do when it fails. */
export function BackupFolder() {
  const { notebook, zone, now } = useServices()
  const watch = useWatched()
  const [state, setState] = useState<FolderState | null>(null)
  const [asking, setAsking] = useState<number | null>(null)
  const keep = useCallback(
    async (ask: boolean) => setState(await keepFolder({ notebook, zone, now, ask })),
    [notebook, zone, now],
  )
  useEffect(() => {
    if (foldersOffered()) watch(keep(false))
  }, [keep, watch])
  if (!foldersOffered() || state === null) return null

  const choose = async () => {
    setAsking(null)
    if (await chooseFolder()) await keep(true)
  }
  const askOrChoose = async () => {
    const all = await notebook.summaries({ archived: true, binned: true })
    const sealed = all.filter((summary) => summary.sealed).length
    if (sealed > 0) setAsking(sealed)
    else await choose()
  }
  const stop = async () => {
    await forgetFolder()
    setState({ is: 'none' })
  }
  return (
    <div className={styles.folder}>
      {state.is === 'none' ? (
        <>
          <p className={styles.soft}>{folderOffer}</p>
          <div>
            <Button size="small" onPress={askOrChoose}>
              Keep the backup in a folder
            </Button>
          </div>
        </>
      ) : state.is === 'trouble' ? (
        <ErrorNote
          title={folderTroubleText(state.name, state.trouble).title}
          action={
            <>
              <Button onPress={() => keep(true)}>
                {state.trouble === 'not-allowed' ? 'Allow it again' : 'Try again'}
              </Button>
              <Button onPress={askOrChoose}>Another folder</Button>
              <Button kind="quiet" onPress={stop}>
                No folder any more
              </Button>
            </>
          }
        >
          {folderTroubleText(state.name, state.trouble).mend}
        </ErrorNote>
      ) : (
        <p className={styles.soft} role="status">
          {folderText(state.name, state.at === null ? '' : dayText(state.at, now()))}{' '}
          {state.sealed === 0 ? '' : `${sealedInFileText(state.sealed)} `}
          <Button kind="quiet" size="small" onPress={stop}>
            No folder any more
          </Button>
        </p>
      )}
      {asking === null ? null : (
        <BackupDialog sealed={asking} onBackUp={choose} onClose={() => setAsking(null)} />
      )}
    </div>
  )
}
