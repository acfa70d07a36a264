import { useLiveQuery } from 'dexie-react-hooks'
import { useEffect, useState } from 'react'
import { idleMoment } from '@/app/kit/page/idle-moment.ts'
import { useServices } from '@/app/services/services.ts'

/** Has the notebook read what a search looks through once the page is at rest, and again when it changed: shows nothing. */
export function ReadySearch() {
  const { notebook } = useServices()
  const [atRest, setAtRest] = useState(false)
  useEffect(() => {
    const asked = { stopped: false }
    void idleMoment().then(() => asked.stopped || setAtRest(true))
    return () => {
      asked.stopped = true
    }
  }, [])
  useLiveQuery(async () => {
    if (atRest) await notebook.readySearch()
  }, [notebook, atRest])
  return null
}
