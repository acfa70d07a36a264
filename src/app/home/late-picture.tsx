import { createElement, useEffect } from 'react'
import { latePart, useLate } from '@/app/kit/page/late-view.tsx'
import type { Summary } from '@/notebook/summary-record.ts'
import styles from './home.module.css'

/** Loaded once there is a trial to picture: an empty notebook opens without it. */
const railPicture = latePart(async () => (await import('./rail-picture.tsx')).RailPicture)

/** Fetches the pictures for all rows together, so that it is said once where they cannot be had. */
export function FetchPictures({ onHere }: { onHere: () => void }) {
  const here = useLate(railPicture) !== null
  useEffect(() => {
    if (here) onHere()
  }, [here, onHere])
  return null
}

/** A trial’s picture, or its room until the pictures are here. */
export function LatePicture({ summary }: { summary: Summary }) {
  const picture = railPicture.here()
  return picture === null ? <div className={styles.picture} /> : createElement(picture, { summary })
}
