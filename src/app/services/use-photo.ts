import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect, useState } from 'react'
import { useServices } from './services.ts'

/** A photo's picture as an address for this page; `missing` when it did not travel with its trial's file. */
export function usePhoto(photoId: string): { address: string | null; missing: boolean } {
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
  return { address, missing: found !== undefined && !picture }
}
