import { useEffect, useState } from 'react'

/** Whether the screen is kept on: `no` where the browser refused or cannot. */
export type Awake = 'yes' | 'no' | 'asking'

/**
 * Keeps the screen on while the bench is open, where the browser can. The lock is lost whenever the page is hidden, so it
 * is asked for again when it comes back. A browser that refuses (low battery, plain http) just dims as usual, which is told.
 */
export function useKeepAwake(): Awake {
  const [awake, setAwake] = useState<Awake>('asking')
  useEffect(() => {
    if (!('wakeLock' in navigator)) {
      setAwake('no')
      return
    }
    let sentinel: WakeLockSentinel | undefined
    let left = false
    const ask = async () => {
      if (document.visibilityState !== 'visible') return
      const granted = await navigator.wakeLock.request('screen').catch(() => undefined)
      if (left) await granted?.release()
      else {
        sentinel = granted
        setAwake(granted ? 'yes' : 'no')
      }
    }
    void ask()
    document.addEventListener('visibilitychange', ask)
    return () => {
      left = true
      document.removeEventListener('visibilitychange', ask)
      void sentinel?.release()
    }
  }, [])
  return awake
}
