import { ringSeconds, scheduleRing } from './ring-sound.ts'

/** Whether a ring can be heard: `waiting` for the first press, which a browser asks for; `none` where it has no sound. */
export type Heard = 'waiting' | 'on' | 'none'

/** Rings not answered sound again: so many times, so far apart (seconds). */
const again = { times: 5, everySeconds: 20 }

export interface Ringer {
  /** Waits for the first press of the page; gives what ends it. */
  open: () => () => void
  heard: () => Heard
  /** Schedules rings at these moments and no others (UTC ms); moments that are past are left out. */
  ringAt: (moments: readonly number[]) => void
  /** Whether the bell could sound all the while since this was asked last: its clock stands in a frozen page. */
  ranSinceAsked: () => boolean
  ringNow: () => void
  /** Rings once where the page had sound before; one that was never pressed stays silent, at its first press too. */
  ringAtReturn: () => void
}

/** So much of the time gone by a bell's clock may lack, since both are read one after the other: a share, and ms. */
const lacking = { share: 0.1, milliseconds: 2000 }

/**
 * The bell of the page. Rings are laid into the audio clock ahead, since a page that is hidden wakes late; a frozen one is silent,
 * whatever is laid, and its rings are laid anew when it runs again. Until the first press a browser gives no sound. `now` tells UTC ms.
 */
export function ringer(now: () => number, onHeard: (heard: Heard) => void): Ringer {
  let context: AudioContext | null = null
  let laid: (() => void)[] = []
  let moments: readonly number[] = []
  let asked: { at: number; seconds: number } | null = null
  const heard = (): Heard =>
    'AudioContext' in globalThis ? (context?.state === 'running' ? 'on' : 'waiting') : 'none'
  const lay = () => {
    for (const takeBack of laid) takeBack()
    laid = []
    if (context?.state !== 'running') return
    const { currentTime } = context
    // Asked anew: a steady clock stands while some devices sleep.
    const at = now()
    for (const moment of moments)
      for (let turn = 0; turn < again.times; turn += 1) {
        const inSeconds = (moment - at) / 1000 + turn * again.everySeconds
        if (inSeconds > -ringSeconds && moment > at - 2000)
          laid.push(scheduleRing(context, currentTime + Math.max(0, inSeconds)))
      }
  }
  const wake = async () => {
    if (!('AudioContext' in globalThis)) return
    context ??= new AudioContext()
    if (context.state !== 'running') await context.resume().catch(() => undefined)
    onHeard(heard())
    lay()
  }
  const ringNow = () => {
    void wake().then(() => {
      if (context?.state === 'running') scheduleRing(context, context.currentTime + 0.05)
      navigator.vibrate?.([300, 150, 300])
    })
  }
  return {
    heard,
    open: () => {
      onHeard(heard())
      const pressed = () => void wake()
      const resumed = () => {
        if (context) void wake()
      }
      const shown = () => {
        if (document.visibilityState === 'visible') resumed()
      }
      document.addEventListener('pointerdown', pressed)
      document.addEventListener('keydown', pressed)
      document.addEventListener('visibilitychange', shown)
      document.addEventListener('resume', resumed)
      return () => {
        document.removeEventListener('pointerdown', pressed)
        document.removeEventListener('keydown', pressed)
        document.removeEventListener('visibilitychange', shown)
        document.removeEventListener('resume', resumed)
        for (const takeBack of laid) takeBack()
        void context?.close()
        context = null
      }
    },
    ringAt: (next) => {
      // A press answers: what is due no longer leaves the list, and so does its sound.
      moments = next.filter((moment) => moment > now() - 2000)
      lay()
    },
    ranSinceAsked: () => {
      const before = asked
      asked = context?.state === 'running' ? { at: now(), seconds: context.currentTime } : null
      if (before === null || asked === null) return false
      const gone = asked.at - before.at
      const sounded = (asked.seconds - before.seconds) * 1000
      return sounded >= gone * (1 - lacking.share) - lacking.milliseconds
    },
    ringNow,
    ringAtReturn: () => {
      if (context) ringNow()
    },
  }
}
