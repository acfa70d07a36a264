import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect, useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import type { LevelPhoto } from './photos-of.ts'
import styles from './photos-part.module.css'

/** One photo with its session; a picture that did not travel with its trial's file is said to be missing. */
export function KeptPhoto({ photo, level }: { photo: LevelPhoto; level: string }) {
  const { notebook } = useServices()
  const { photoId, caption, session } = photo
  const found = useLiveQuery(
    async () => ({ picture: await notebook.picture(photoId) }),
    [notebook, photoId],
  )
  const [address, setAddress] = useState<string | null>(null)
  const picture = found?.picture
  useEffect(() => {
    if (!picture) return
    const made = URL.createObjectURL(picture)
    setAddress(made)
    return () => URL.revokeObjectURL(made)
  }, [picture])
  const where = `Session ${session}`
  return (
    <figure className={styles.photo}>
      {address === null ? (
        <div className={styles.room}>
          {found && !picture ? 'This picture is not on this device.' : null}
        </div>
      ) : (
        <img className={styles.picture} src={address} alt={`${level}, ${where.toLowerCase()}`} />
      )}
      <figcaption>{caption === '' ? where : `${where}: ${caption}`}</figcaption>
    </figure>
  )
}
