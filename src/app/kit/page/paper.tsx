import { type ReactNode, useEffect, useEffectEvent } from 'react'
import { createPortal } from 'react-dom'
import styles from './paper.module.css'

interface PaperProps {
  children: ReactNode
  /** The print dialog has closed: the paper may go. */
  onDone: () => void
  look?: string | undefined
}

/** Something for the printer alone. It is drawn off the page first, then the print dialog opens on it and on nothing else. */
export function Paper({ children, onDone, look = '' }: PaperProps) {
  const done = useEffectEvent(onDone)
  useEffect(() => {
    document.body.dataset.printsPaper = 'true'
    const closed = () => done()
    window.addEventListener('afterprint', closed)
    const frame = requestAnimationFrame(() => window.print())
    return () => {
      cancelAnimationFrame(frame)
      window.removeEventListener('afterprint', closed)
      delete document.body.dataset.printsPaper
    }
  }, [])
  return createPortal(<div className={`${styles.paper} ${look}`}>{children}</div>, document.body)
}
