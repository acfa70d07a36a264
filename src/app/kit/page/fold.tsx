import { type ReactNode, useId, useState } from 'react'
import { ForwardMark } from '@/app/kit/look/forward-mark.tsx'
import styles from './fold.module.css'
import { InFold } from './in-fold.ts'

interface FoldProps {
  name: string
  /** What stands in it, said in one line: a fold is never a bare heading. */
  result: ReactNode
  children: ReactNode
  /** Open from the beginning. */
  startsOpen?: boolean
  /** Held by the page: whether it is open, and what a press on it asks for. */
  open?: boolean
  onToggle?: (open: boolean) => void
  id?: string
  level?: 2 | 3
}

/** A part of a page as one row that states its result and opens. Its matter is made when it is first opened and stays. */
export function Fold(props: FoldProps) {
  const { name, result, children, startsOpen = false, onToggle, id, level = 2 } = props
  const [own, setOwn] = useState(startsOpen)
  const open = props.open ?? own
  const [made, setMade] = useState(open)
  if (open && !made) setMade(true)
  const panelId = useId()
  const Heading = level === 2 ? 'h2' : 'h3'
  const toggle = () => {
    setOwn(!open)
    onToggle?.(!open)
  }
  return (
    <section className={styles.fold} id={id} aria-label={name}>
      <Heading className={styles.heading}>
        <button
          type="button"
          className={styles.line}
          aria-expanded={open}
          aria-controls={made ? panelId : undefined}
          onClick={toggle}
        >
          <span className={styles.name}>{name}</span>{' '}
          <span className={styles.result}>{result}</span>
          <ForwardMark turned={open} />
        </button>
      </Heading>
      {made ? (
        <div id={panelId} className={styles.matter} hidden={!open}>
          <InFold value={true}>{children}</InFold>
        </div>
      ) : null}
    </section>
  )
}
