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
  ringAt: (moments: readonly number[], now: number) => void
  ringNow: () => void
}

/**
 * The bell of the page. Rings are laid into the audio clock ahead, since a page that is hidden wakes late; a frozen one is silent,
 * whatever is laid. Until the first press a browser gives no sound.
 */
export function ringer(onHeard: (heard: Heard) => void): Ringer {
  let context: AudioContext | null = null
  let laid: (() => void)[] = []
  let moments: readonly number[] = []
  let offset = 0
  const heard = (): Heard =>
    'AudioContext' in globalThis ? (context?.state === 'running' ? 'on' : 'waiting') : 'none'
  const lay = () => {
    for (const takeBack of laid) takeBack()
    laid = []
    if (context?.state !== 'running') return
    const { currentTime } = context
    const now = performance.now() + offset
    for (const moment of moments)
      for (let turn = 0; turn < again.times; turn += 1) {
        const inSeconds = (moment - now) / 1000 + turn * again.everySeconds
        if (inSeconds > -ringSeconds && moment > now - 2000)
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
  return {
    heard,
    open: () => {
      onHeard(heard())
      const pressed = () => void wake()
      const shown = () => {
        if (document.visibilityState === 'visible' && context) void wake()
      }
      document.addEventListener('pointerdown', pressed)
      document.addEventListener('keydown', pressed)
      document.addEventListener('visibilitychange', shown)
      return () => {
        document.removeEventListener('pointerdown', pressed)
        document.removeEventListener('keydown', pressed)
        document.removeEventListener('visibilitychange', shown)
        for (const takeBack of laid) takeBack()
        void context?.close()
        context = null
      }
    },
    ringAt: (next, now) => {
      // A press answers: what is due no longer leaves the list, and so does its sound.
      moments = next.filter((moment) => moment > now - 2000)
      offset = now - performance.now()
      lay()
    },
    ringNow: () => {
      void wake().then(() => {
        if (context?.state === 'running') scheduleRing(context, context.currentTime + 0.05)
        navigator.vibrate?.([300, 150, 300])
      })
    },
  }
}
