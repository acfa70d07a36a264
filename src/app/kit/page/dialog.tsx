import { type ReactNode, useEffect, useId, useRef } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './dialog.module.css'

interface DialogProps {
  title: string
  open: boolean
  onClose: () => void
  children: ReactNode
  /** The buttons at the foot; without them the dialog has one that closes it. */
  actions?: ReactNode
}

/** A question or small form over the page. The browser keeps focus inside and gives it back where it was. */
export function Dialog({ title, open, onClose, children, actions }: DialogProps) {
  const ref = useRef<HTMLDialogElement>(null)
  const id = useId()
  useEffect(() => {
    const dialog = ref.current
    if (!dialog) return
    if (open && !dialog.open) dialog.showModal()
    if (!open && dialog.open) dialog.close()
  }, [open])

  return (
    <dialog ref={ref} className={styles.dialog} aria-labelledby={id} onClose={onClose}>
      {open ? (
        <>
          <h2 id={id}>{title}</h2>
          <div className={styles.body}>{children}</div>
          <div className={styles.actions}>
            {actions ?? (
              <Button onPress={onClose} kind="plain">
                Close
              </Button>
            )}
          </div>
        </>
      ) : null}
    </dialog>
  )
}
