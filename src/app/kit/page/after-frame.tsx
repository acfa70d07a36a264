import { type ReactNode, startTransition, useEffect, useState } from 'react'

interface AfterFrameProps {
  children: ReactNode
  /** What stands there meanwhile; nothing. */
  waiting?: ReactNode
}

/**
 * What is drawn once the frame before it stands: a large place comes a part at a time, so that no press waits for all of it.
 * One inside another comes a frame later still.
 */
export function AfterFrame({ children, waiting = null }: AfterFrameProps) {
  const [stands, setStands] = useState(false)
  useEffect(() => startTransition(() => setStands(true)), [])
  return stands ? children : waiting
}
