import { useEffect } from 'react'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import { foldersOffered } from '@/app/services/backup-folder.ts'
import { keepFolder } from '@/app/services/keep-folder.ts'
import { useServices } from '@/app/services/services.ts'

const everyMilliseconds = 5 * 60_000

/** Renews the backup in its folder on whatever page is open, where there is something newer; how it stands is said in the notebook. */
export function RenewedBackup() {
  const { notebook, zone, now } = useServices()
  const watch = useWatched()
  useEffect(() => {
    if (!foldersOffered()) return
    const timer = setInterval(
      () => watch(keepFolder({ notebook, zone, now, ask: false })),
      everyMilliseconds,
    )
    return () => clearInterval(timer)
  }, [notebook, zone, now, watch])
  return null
}
