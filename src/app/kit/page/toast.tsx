import { useEffect, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './toast.module.css'

interface ToastProps {
  message: string
  onUndo?: () => unknown
  undoLabel?: string
  onClose: () => void
  seconds?: number
}

/** Says what just happened at the foot of the page and offers to take it back. It waits while pointed at or focused. */
export function Toast({ message, onUndo, undoLabel = 'Undo', onClose, seconds = 10 }: ToastProps) {
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
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <span className={styles.message}>{message}</span>
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
