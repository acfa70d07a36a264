import { Link } from 'wouter'
import styles from './header.module.css'
import { Menu } from './menu.tsx'
import { lessonPlace, placeNames, wayToKitchen } from './place-names.ts'
import { WaysOfTrial } from './ways-of-trial.tsx'

interface HeaderWaysProps {
  location: string
  /** The trial whose table the device lies at; null while it lies at none. */
  lentTo: string | null
}

/** The ways of the head: the places of the open trial, or the kitchen, and the one menu. */
export function HeaderWays({ location, lentTo }: HeaderWaysProps) {
  const [, , trialId, placeName] = location.startsWith('/trial/') ? location.split('/') : []
  const place = [...placeNames, lessonPlace].find(({ name }) => name === placeName)
  const atTable = lentTo !== null
  return (
    <>
      {place && trialId ? (
        <WaysOfTrial trialId={trialId} place={place} atTable={lentTo === trialId} />
      ) : atTable ? null : (
        <nav aria-label="Evenhand" className={styles.ways}>
          <Link
            href={wayToKitchen(location)}
            className={styles.way ?? ''}
            aria-current={location.startsWith('/kitchen') ? 'page' : undefined}
          >
            Kitchen
          </Link>
        </nav>
      )}
      {atTable ? null : <Menu />}
    </>
  )
}
