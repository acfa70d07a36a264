import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect, useState } from 'react'
import { useServices } from '@/app/services/services.ts'
import styles from './bench.module.css'

/** A logged photo, small. A picture that did not travel with its trial's file is said to be missing. */
export function PhotoThumb({ photoId, caption }: { photoId: string; caption: string }) {
  const { notebook } = useServices()
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
  if (found && !picture) return <span className={styles.quiet}>picture not on this device</span>
  return address === null ? null : (
    <img className={styles.thumb} src={address} alt={caption || 'Logged photo'} />
  )
}
