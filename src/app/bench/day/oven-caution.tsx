import { useLiveQuery } from 'dexie-react-hooks'
import { type ReactNode, useState } from 'react'
import look from '@/app/bench/day/now.module.css'
import { WarningMark } from '@/app/kit/look/warning-mark.tsx'
import { CautionWords } from '@/app/kit/page/caution-words.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'

const topics = ['raw-dough', 'hot-oven', 'carbon-monoxide', 'chilled-food'] as const

interface OvenCautionProps {
  next: boolean
  /** What stands in its place once it was read. */
  children?: ReactNode
}

/**
 * The oven and dough cautions as one line that opens over the page, until it was read once; then they stay in the guide and in
 * every report. `next`: the oven is what comes next.
 */
export function OvenCaution({ next, children = null }: OvenCautionProps) {
  const { notebook } = useServices()
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  const [open, setOpen] = useState(false)
  if (!settings || settings.cautionsSeen.includes('oven')) return children
  const seen = () => notebook.keepSettings({ cautionsSeen: [...settings.cautionsSeen, 'oven'] })
  return (
    <>
      <button type="button" className={look.caution} onClick={() => setOpen(true)}>
        <WarningMark />{' '}
        {next ? 'Hot oven, carbon monoxide, raw dough' : 'Before the first bake: read this once'}
      </button>
      <Dialog
        title="Before the first bake"
        open={open}
        onClose={() => setOpen(false)}
        actions={
          <>
            <Button kind="primary" size="bench" onPress={seen}>
              Read, and kept in mind
            </Button>
            <Button size="bench" onPress={() => setOpen(false)}>
              Later
            </Button>
          </>
        }
      >
        <CautionWords topics={topics} />
      </Dialog>
    </>
  )
}
