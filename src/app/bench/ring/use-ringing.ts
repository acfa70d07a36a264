import { useEffect, useMemo, useRef, useState } from 'react'
import type { Bench } from '@/app/bench/bench-context.ts'
import type { Awake } from '@/app/bench/keep-awake.ts'
import { lineText } from '@/app/bench/line-name.ts'
import { useServices } from '@/app/services/services.ts'
import {
  alarmBeat,
  type Unheard,
  unheardLines,
  unheardOf,
} from '@/core/session/alarms/alarm-beat.ts'
import { type Alarm, notYetCalled } from '@/core/session/alarms/day-alarms.ts'
import type { OvenCue } from '@/core/session/oven/oven-cues.ts'
import { alarmText, cueText } from '@/core/wording/bench/alarm-text.ts'
import { type Heard, ringer } from './ringer.ts'

/** What can ring on this device, and what was due unheard. */
export interface Ringing {
  sound: Heard
  /** Notes of the system, shown when the page is behind another. */
  notes: NotificationPermission | 'none'
  awake: Awake
  speaks: boolean | null
  /** Told, and not read yet. */
  missed: readonly (Unheard & { text: string })[]
  alarms: readonly Alarm[]
  test: () => void
  askNotes: () => Promise<void>
  turnSpeech: () => void
  forgetMissed: () => void
}

interface RingingProps {
  alarms: readonly Alarm[]
  cues: readonly OvenCue[]
  bench: Bench
  awake: Awake
}

/** A page that was not run for longer than this was hidden, frozen or shut: nothing could ring. */
const awayMilliseconds = 15_000

const canSpeak = 'speechSynthesis' in globalThis

/**
 * Rings at every alarm of the day: a sound scheduled ahead by the device's audio clock, a buzz, a note of the system where it is
 * allowed. Moments come from the log's stamps, so a reload changes nothing; what came due while the page could not ring is told
 * at return, with one ring for all of it, and stands until it is read, over reloads too.
 */
export function useRinging({ alarms, cues, bench, awake }: RingingProps): Ringing {
  const { now } = useServices()
  const { plan, session, drafts } = bench
  const [sound, setSound] = useState<Heard>('waiting')
  const [notes, setNotes] = useState<Ringing['notes']>(() =>
    'Notification' in globalThis ? Notification.permission : 'none',
  )
  const [bell] = useState(() => ringer(now, setSound))
  const words = (alarm: Alarm) =>
    alarmText(alarm.item, plan, lineText(session, plan, alarm.item.unit))
  const latest = useRef({ alarms, cues, words })
  latest.current = { alarms, cues, words }
  const speaks = drafts.values.speaks === 'yes'

  useEffect(() => bell.open(), [bell])
  const called = useRef<ReadonlyMap<string, number>>(new Map())
  // Laid anew only when a moment moves: what is sounding already sounds on.
  const moments = notYetCalled(alarms, called.current)
    .map(({ at }) => at)
    .join(' ')
  useEffect(
    () => bell.ringAt(moments === '' ? [] : moments.split(' ').map(Number)),
    [bell, moments],
  )

  const seenAt = Number(drafts.values.seenAt ?? Number.NaN)
  const heardTo = useRef<number | null>(null)
  const { ready } = drafts
  const unheard = useRef<readonly Unheard[]>([])
  const keepUnheard = (next: readonly Unheard[]) => {
    unheard.current = next
    // Up to now all is told: said once, though the page should end without a word.
    drafts.setAll({
      ...drafts.values,
      unheard: unheardLines(next),
      seenAt: String(heardTo.current ?? now()),
    })
  }
  const keep = useRef({ seen: (_at: number) => {}, unheard: keepUnheard })
  keep.current = { seen: (at) => drafts.set('seenAt', String(at)), unheard: keepUnheard }
  const keptUnheard = drafts.values.unheard ?? ''
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was kept at the last visit is read once
  useEffect(() => {
    if (!ready) return undefined
    if (heardTo.current === null) {
      heardTo.current = Number.isFinite(seenAt) ? Math.min(seenAt, now()) : now()
      unheard.current = unheardOf(keptUnheard)
    }
    const beat = () => {
      const at = now()
      const since = heardTo.current ?? at
      const inSight = document.visibilityState === 'visible'
      const ran = bell.ranSinceAsked()
      const next = alarmBeat(latest.current.alarms, {
        ...{ since, now: at, inSight, called: called.current, unheard: unheard.current },
        couldRing: ran || (inSight && at - since <= awayMilliseconds),
      })
      called.current = next.called
      heardTo.current = at
      if (next.unheard !== unheard.current) keep.current.unheard(next.unheard)
      if (next.tellsNow) bell.ringAtReturn()
      for (const alarm of next.call) call(latest.current.words(alarm), alarm.key)
    }
    const left = () => keep.current.seen(heardTo.current ?? now())
    const shown = () => {
      if (document.visibilityState === 'visible') beat()
      else left()
    }
    beat()
    const timer = setInterval(beat, 1000)
    const keeper = setInterval(left, 60_000)
    // Before the drafts write what they have, on the same word: a page out of sight may never run again.
    const early = { capture: true }
    document.addEventListener('visibilitychange', shown, early)
    window.addEventListener('pagehide', left, early)
    return () => {
      clearInterval(timer)
      clearInterval(keeper)
      document.removeEventListener('visibilitychange', shown, early)
      window.removeEventListener('pagehide', left, early)
    }
  }, [ready, now, bell])

  const spoken = useRef(new Set<string>())
  useEffect(() => {
    if (!speaks || !canSpeak) return undefined
    const timer = setInterval(() => {
      const at = now()
      for (const cue of latest.current.cues) {
        if (cue.at > at || at - cue.at > 5000 || spoken.current.has(cue.key)) continue
        spoken.current.add(cue.key)
        const { unit } = cue.of.item
        speechSynthesis.speak(
          new SpeechSynthesisUtterance(cueText(cue.say, lineText(session, plan, unit))),
        )
      }
    }, 500)
    return () => clearInterval(timer)
  }, [speaks, now, session, plan])

  // biome-ignore lint/correctness/useExhaustiveDependencies: the words follow plan and session, which the alarms follow too
  const missed = useMemo(
    () =>
      unheardOf(keptUnheard).flatMap((one) => {
        const alarm = alarms.find(({ key }) => key === one.key)
        return alarm ? [{ ...one, text: words(alarm) }] : []
      }),
    [keptUnheard, alarms],
  )

  return useMemo(
    () => ({
      sound,
      notes,
      awake,
      missed,
      alarms,
      speaks: canSpeak ? speaks : null,
      test: () => bell.ringNow(),
      askNotes: async () => setNotes(await Notification.requestPermission()),
      turnSpeech: () => drafts.set('speaks', speaks ? '' : 'yes'),
      forgetMissed: () => keep.current.unheard([]),
    }),
    [sound, notes, awake, missed, alarms, speaks, bell, drafts],
  )
}

/** Buzzes, and shows a note of the system when the page is behind another and it is allowed. */
function call(text: string, key: string): void {
  navigator.vibrate?.([300, 150, 300, 150, 600])
  if (document.visibilityState === 'visible') return
  if (!('Notification' in globalThis) || Notification.permission !== 'granted') return
  void showNote(text, key)
}

/** By the kept program where there is one, since phones show notes of no other. */
async function showNote(text: string, key: string): Promise<void> {
  const kept = await navigator.serviceWorker?.getRegistration().catch(() => undefined)
  const options = { tag: key, requireInteraction: true }
  if (kept) await kept.showNotification(text, options)
  else new Notification(text, options)
}
