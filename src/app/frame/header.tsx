import { Link, useLocation } from 'wouter'
import { AppearanceButton } from './appearance-button.tsx'
import styles from './frame.module.css'

const ways = [
  { href: '/', words: 'Notebook' },
  { href: '/kitchen', words: 'Kitchen' },
  { href: '/about', words: 'About' },
]

/** The line that stands on top of every page; while the device lies at a table it leads nowhere. */
export function Header({ atTable }: { atTable: boolean }) {
  const [location] = useLocation()
  return (
    <header className={styles.header}>
      <button
        type="button"
        className={styles.skip}
        onClick={() => document.getElementById('page')?.focus()}
      >
        Skip to the page
      </button>
      {atTable ? (
        <span className={styles.brand}>Evenhand</span>
      ) : (
        <Link href="/" className={styles.brand ?? ''}>
          Evenhand
        </Link>
      )}
      <nav aria-label="Evenhand" className={styles.ways}>
        {(atTable ? [] : ways).map(({ href, words }) => (
          <Link
            key={href}
            href={href}
            className={styles.way ?? ''}
            aria-current={location === href ? 'page' : undefined}
          >
            {words}
          </Link>
        ))}
        <AppearanceButton />
      </nav>
    </header>
  )
}
