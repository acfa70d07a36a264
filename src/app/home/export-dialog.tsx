import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'

interface ExportDialogProps {
  onExport: () => Promise<void>
  onClose: () => void
}

/** What an export under seal gives away, said before it does. */
export function ExportDialog({ onExport, onClose }: ExportDialogProps) {
  return (
    <Dialog
      title="Export a sealed trial?"
      open
      onClose={onClose}
      actions={
        <>
          <Button
            kind="primary"
            onPress={async () => {
              await onExport()
              onClose()
            }}
          >
            Export it
          </Button>
          <Button onPress={onClose}>Not now</Button>
        </>
      }
    >
      <p>
        Its tasting is sealed, but the file holds everything: levels, weights, letters and what each
        code stands for. Keep it from whoever still tastes.
      </p>
    </Dialog>
  )
}
