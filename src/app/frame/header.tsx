import { Link, useLocation } from 'wouter'
import { BrandMark } from '@/app/kit/look/brand-mark.tsx'
import { useTableDevice } from '@/app/services/table-device.ts'
import styles from './header.module.css'
import { Menu } from './menu.tsx'
import { placeNames } from './place-names.ts'
import { WaysOfTrial } from './ways-of-trial.tsx'

/** The line that stands on top of every page: the name, the places of a trial, one menu. While the device lies at a table it leads nowhere. */
export function Header() {
  const [location] = useLocation()
  const { trialId: lentTo } = useTableDevice()
  const atTable = typeof lentTo === 'string'
  const [, , trialId, placeName] = location.startsWith('/trial/') ? location.split('/') : []
  const place = placeNames.find(({ name }) => name === placeName)
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
        <span className={styles.brand}>
          <BrandMark />
          <span className={styles.name}>Evenhand</span>
        </span>
      ) : (
        <Link
          href="/"
          className={`${styles.brand} ${place ? styles.markAlone : ''}`}
          aria-label="Evenhand, to the Notebook"
        >
          <BrandMark />
          <span className={styles.name}>Evenhand</span>
        </Link>
      )}
      {place?.name === 'bench' ? <div id="head-words" className={styles.words} /> : null}
      {place && trialId ? (
        <WaysOfTrial trialId={trialId} place={place} atTable={lentTo === trialId} />
      ) : atTable ? null : (
        <nav aria-label="Evenhand" className={styles.ways}>
          <Link
            href="/kitchen"
            className={styles.way ?? ''}
            aria-current={location === '/kitchen' ? 'page' : undefined}
          >
            Kitchen
          </Link>
        </nav>
      )}
      {atTable ? null : <Menu />}
    </header>
  )
}
