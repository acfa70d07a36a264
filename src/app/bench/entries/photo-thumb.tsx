import styles from '@/app/bench/bench.module.css'
import { usePhoto } from '@/app/services/use-photo.ts'

/** A logged photo, small. A picture that did not travel with its trial's file is said to be missing. */
export function PhotoThumb({ photoId, caption }: { photoId: string; caption: string }) {
  const { address, missing } = usePhoto(photoId)
  if (missing) return <span className={styles.noPicture}>picture not on this device</span>
  return address === null ? null : (
    <img className={styles.thumb} src={address} alt={caption || 'Logged photo'} />
  )
}
