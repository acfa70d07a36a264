import { Link, useLocation } from 'wouter'
import { BrandMark } from '@/app/kit/look/brand-mark.tsx'
import { ErrorBoundary } from '@/app/kit/page/error-boundary.tsx'
import { lateComponent } from '@/app/kit/page/late-view.tsx'
import { useTableDevice } from '@/app/services/table-device.ts'
import styles from './header.module.css'

/** Fetched behind the first page; the head keeps its height meanwhile. */
const HeaderWays = lateComponent(async () => (await import('./header-ways.tsx')).HeaderWays, null)

/** The line that stands on top of every page: the name, the places of a trial, one menu. While the device lies at a table it leads nowhere. */
export function Header() {
  const [location] = useLocation()
  const { trialId } = useTableDevice()
  const lentTo = typeof trialId === 'string' ? trialId : null
  // Until it is read whether the device lies at a table, nothing leads away from it.
  const home = trialId === null
  const name = (
    <>
      <BrandMark />
      <span className={styles.name}>Evenhand</span>
    </>
  )
  const inTrial = location.startsWith('/trial/')
  return (
    <header className={styles.header}>
      <button
        type="button"
        className={styles.skip}
        onClick={() => document.getElementById('page')?.focus()}
      >
        Skip to the page
      </button>
      {home ? (
        <Link
          href="/"
          className={`${styles.brand} ${inTrial ? styles.markAlone : ''}`}
          aria-label="Evenhand, to the Notebook"
        >
          {name}
        </Link>
      ) : (
        <span className={`${styles.brand} ${lentTo === null && inTrial ? styles.markAlone : ''}`}>
          {name}
        </span>
      )}
      {inTrial && location.split('/')[3] === 'bench' ? (
        <div id="head-words" className={styles.words} />
      ) : null}
      <ErrorBoundary what="the ways at the head of the page" of={location}>
        {trialId === undefined ? null : <HeaderWays location={location} lentTo={lentTo} />}
      </ErrorBoundary>
    </header>
  )
}
