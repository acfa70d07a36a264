import { useEffect } from 'react'

/**
 * Keeps the screen on while the bench is open, where the browser can. The lock is lost whenever the page is hidden, so it
 * is asked for again when it comes back. A browser that refuses (low battery, plain http) just dims as usual.
 */
export function useKeepAwake(): void {
  useEffect(() => {
    if (!('wakeLock' in navigator)) return
    let sentinel: WakeLockSentinel | undefined
    let left = false
    const ask = async () => {
      if (document.visibilityState !== 'visible') return
      const granted = await navigator.wakeLock.request('screen').catch(() => undefined)
      if (left) await granted?.release()
      else sentinel = granted
    }
    void ask()
    document.addEventListener('visibilitychange', ask)
    return () => {
      left = true
      document.removeEventListener('visibilitychange', ask)
      void sentinel?.release()
    }
  }, [])
}
