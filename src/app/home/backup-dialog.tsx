import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { sealedInFileText } from '@/core/wording/files/backup-text.ts'

interface BackupDialogProps {
  /** How many of the trials are sealed. */
  sealed: number
  onBackUp: () => void
  onClose: () => void
}

/** What a backup gives away while a tasting is sealed, said before it does. */
export function BackupDialog({ sealed, onBackUp, onClose }: BackupDialogProps) {
  return (
    <Dialog
      title="Back up while a tasting is sealed?"
      open
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" onPress={onBackUp}>
            Back up
          </Button>
          <Button onPress={onClose}>Not now</Button>
        </>
      }
    >
      <p>{sealedInFileText(sealed)}</p>
    </Dialog>
  )
}
