import { usePhoto } from '@/app/services/use-photo.ts'
import type { LevelPhoto } from './photos-of.ts'
import styles from './photos-part.module.css'

/** One photo with its session; a picture that did not travel with its trial's file is said to be missing. */
export function KeptPhoto({ photo, level }: { photo: LevelPhoto; level: string }) {
  const { photoId, caption, session } = photo
  const { address, missing } = usePhoto(photoId)
  const where = `Session ${session}`
  return (
    <figure className={styles.photo}>
      {address === null ? (
        <div className={styles.room}>{missing ? 'This picture is not on this device.' : null}</div>
      ) : (
        <img className={styles.picture} src={address} alt={`${level}, ${where.toLowerCase()}`} />
      )}
      <figcaption>{caption === '' ? where : `${where}: ${caption}`}</figcaption>
    </figure>
  )
}
