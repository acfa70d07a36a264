import { useState } from 'react'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import styles from './menu.module.css'
import { useShutOutside } from './use-shut-outside.ts'

/** Fetched when it is first opened. */
const MenuList = lateComponent(async () => (await import('./menu-list.tsx')).MenuList, null)

/** The one menu of the head, shut by Escape, by a press elsewhere and by what is chosen in it. */
export function Menu() {
  const [open, setOpen] = useState(false)
  const shut = () => setOpen(false)
  const box = useShutOutside(open, shut)
  return (
    <nav className={styles.menu} aria-label="Menu" ref={box}>
      <button
        type="button"
        className={styles.press}
        aria-label="Menu"
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        <svg aria-hidden="true" width="16" height="13" viewBox="0 0 16 13" stroke="currentColor">
          <path d="M0 1.2h16M0 6.5h16M0 11.8h16" strokeWidth="2.2" />
        </svg>
      </button>
      {open ? (
        <div className={styles.list}>
          <ErrorBoundary what="the menu">
            <MenuList shut={shut} />
          </ErrorBoundary>
        </div>
      ) : null}
    </nav>
  )
}
