import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import { thingWords } from './thing-words.ts'

/** The question before a taster's initials are emptied for good. */
export function EraseTaster({
  taster,
  onClose,
}: {
  taster: KitchenThing | null
  onClose: () => void
}) {
  const { notebook } = useServices()
  return (
    <Dialog
      title={taster ? `Erase ${thingWords(taster).title}?` : ''}
      open={taster !== null}
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Keep the initials</Button>
          <Button
            kind="primary"
            onPress={async () => {
              if (taster) await notebook.eraseTaster(taster.id)
              onClose()
            }}
          >
            Erase them
          </Button>
        </>
      }
    >
      <p>
        The initials go for good, in every trial of this notebook; the scores stay without a name,
        so no finding changes by it. Trial files and backups saved earlier still hold them.
      </p>
    </Dialog>
  )
}
