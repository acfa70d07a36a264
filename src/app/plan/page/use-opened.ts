import { useEffect, useState } from 'react'
import { usePlanPage } from './plan-page-context.ts'

/** Whether a row stands open: by the person's press, or because a jump leads to a field inside it. */
export function useOpened(path: string): [boolean, (open: boolean) => void] {
  const [open, setOpen] = useState(false)
  const led = usePlanPage((page) => (page.jump?.to.startsWith(`${path}/`) ? page.jump : null))
  useEffect(() => {
    if (led) setOpen(true)
  }, [led])
  return [open, setOpen]
}
