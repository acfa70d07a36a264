import { type ReactNode, useId, useState } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './side-note.module.css'

interface SideNoteProps {
  /** What the press opens, such as "How this was computed". */
  label: string
  children: ReactNode
}

/** What stands one press deeper: method, formula, sources. Open or shut, it stays where it belongs. */
export function SideNote({ label, children }: SideNoteProps) {
  const [open, setOpen] = useState(false)
  const id = useId()
  return (
    <div className={styles.note}>
      <Button kind="quiet" size="small" expanded={open} onPress={() => setOpen(!open)}>
        {label}
      </Button>
      {open ? (
        <aside id={id} aria-label={label} className={styles.body}>
          {children}
        </aside>
      ) : null}
    </div>
  )
}
