import { useState } from 'react'
import { useLocation } from 'wouter'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { ErrorNote } from '@/app/kit/page/error-note.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { FileButton } from '@/app/kit/press/file-button.tsx'
import { LinkButton } from '@/app/kit/press/link-button.tsx'
import { saveFile } from '@/app/kit/press/save-file.ts'
import { useServices } from '@/app/services/services.ts'
import styles from './home.module.css'
import { ImportTroubles } from './import-troubles.tsx'
import type { ReadIn, useReadIn } from './use-read-in.ts'

/** Trial files in, backups out and in: everything that passes between this notebook and files. */
export function FileDesk({ reading }: { reading: ReadIn }) {
  const { notebook, now } = useServices()
  const [restored, setRestored] = useState<{ fine: boolean; words: string } | null>(null)

  const backUp = async () => {
    const day = new Date(now()).toISOString().slice(0, 10)
    saveFile(`evenhand-backup-${day}.zip`, await notebook.backUp())
  }
  const restore = async ([zip]: File[]) => {
    if (!zip) return
    const outcome = await notebook.restore(zip)
    if (!outcome.ok)
      setRestored({
        fine: false,
        words:
          outcome.reason === 'not-a-backup'
            ? `${zip.name} is not a backup of a notebook. Choose the zip file that “Back up” saved.`
            : `${zip.name} was written by a newer version (${outcome.found}; this one reads up to ${outcome.known}). Update the program first.`,
      })
    else {
      const taken = outcome.trials.filter((each) => each.ok).length
      const left = outcome.trials.length - taken
      setRestored({
        fine: left === 0,
        words: `${taken} ${taken === 1 ? 'trial is' : 'trials are'} here${left > 0 ? `; ${left} left as they were, because another trial of the same identity but other content is already in the notebook` : ''}.`,
      })
    }
  }

  return (
    <div className={styles.desk}>
      <div className={styles.deskButtons}>
        <FileButton accept=".json,application/json" multiple onFiles={reading.readIn}>
          Read in a trial file
        </FileButton>
        <LinkButton href="#/scores">Import scores</LinkButton>
        <Button onPress={backUp}>Back up all</Button>
        <FileButton accept=".zip,application/zip" onFiles={restore}>
          Restore a backup
        </FileButton>
      </div>
      {restored?.fine ? <Notice kind="know">{restored.words}</Notice> : null}
      {restored && !restored.fine ? (
        <ErrorNote title="Not all of the backup was restored.">{restored.words}</ErrorNote>
      ) : null}
      {reading.refused ? (
        <ImportTroubles fileName={reading.refused.name} troubles={reading.refused.troubles} />
      ) : null}
      <KeepBoth reading={reading} />
    </div>
  )
}

function KeepBoth({ reading }: { reading: ReturnType<typeof useReadIn> }) {
  const [, go] = useLocation()
  const { twin, forgetTwin, keepBoth } = reading
  return (
    <Dialog
      title="This trial is already here, with other content"
      open={twin !== null}
      onClose={forgetTwin}
      actions={
        <>
          <Button onPress={forgetTwin}>Leave the notebook as it is</Button>
          <Button
            kind="primary"
            onPress={async () => {
              const trialId = await keepBoth()
              if (trialId) go(`/trial/${trialId}/plan`)
            }}
          >
            Keep both
          </Button>
        </>
      }
    >
      <p>
        {twin?.name} holds a trial that the notebook has too, but not the same entries. Keep both,
        and the file’s trial comes in as a second one beside yours.
      </p>
    </Dialog>
  )
}
