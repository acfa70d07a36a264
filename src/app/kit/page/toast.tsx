import { useEffect, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './toast.module.css'

interface ToastProps {
  message: string
  onUndo?: () => unknown
  undoLabel?: string
  onClose: () => void
  seconds?: number
  /** Of something that failed: said at once, and above a dialog too. */
  failed?: boolean
}

/** Says what just happened at the foot of the page and offers to take it back. It waits while pointed at or focused. */
export function Toast(props: ToastProps) {
  const { message, onUndo, undoLabel = 'Undo', onClose, seconds = 10, failed = false } = props
  const [held, setHeld] = useState(false)
  useEffect(() => {
    if (held) return
    const timer = setTimeout(onClose, seconds * 1000)
    return () => clearTimeout(timer)
  }, [held, onClose, seconds])
  return (
    <div
      className={styles.toast}
      role="status"
      ref={failed ? aboveDialogs : null}
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <span className={styles.message} role={failed ? 'alert' : undefined}>
        {message}
      </span>
      {onUndo ? (
        <Button kind="plain" onPress={onUndo}>
          {undoLabel}
        </Button>
      ) : null}
      <Button kind="quiet" onPress={onClose} label="Close this message">
        ×
      </Button>
    </div>
  )
}

/** Lifts an element above an open dialog, in browsers that know how. */
function aboveDialogs(element: HTMLElement | null): void {
  if (!element || !('popover' in element)) return
  element.popover = 'manual'
  element.showPopover()
}
