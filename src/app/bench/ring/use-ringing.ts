import { useEffect, useMemo, useRef, useState } from 'react'
import type { Bench } from '@/app/bench/bench-context.ts'
import type { Awake } from '@/app/bench/keep-awake.ts'
import { lineText } from '@/app/bench/line-name.ts'
import { useServices } from '@/app/services/services.ts'
import {
  type Alarm,
  notYetCalled,
  rungBetween,
  stillCalled,
} from '@/core/session/alarms/day-alarms.ts'
import type { OvenCue } from '@/core/session/oven/oven-cues.ts'
import { alarmText, cueText } from '@/core/wording/bench/alarm-text.ts'
import { type Heard, ringer } from './ringer.ts'

/** What can ring on this device, and what was missed. */
export interface Ringing {
  sound: Heard
  /** Notes of the system, shown when the page is behind another. */
  notes: NotificationPermission | 'none'
  awake: Awake
  speaks: boolean | null
  missed: { text: string; at: number; key: string }[]
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
 * allowed. Moments come from the log's stamps, so a reload changes nothing; what came due while the page could not run is told
 * at return.
 */
export function useRinging({ alarms, cues, bench, awake }: RingingProps): Ringing {
  const { now } = useServices()
  const { plan, session, drafts } = bench
  const [sound, setSound] = useState<Heard>('waiting')
  const [notes, setNotes] = useState<Ringing['notes']>(() =>
    'Notification' in globalThis ? Notification.permission : 'none',
  )
  const [missed, setMissed] = useState<Ringing['missed']>([])
  const [bell] = useState(() => ringer(setSound))
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
    () => bell.ringAt(moments === '' ? [] : moments.split(' ').map(Number), now()),
    [bell, moments, now],
  )

  const seenAt = Number(drafts.values.seenAt ?? Number.NaN)
  const heardTo = useRef<number | null>(null)
  const { ready } = drafts
  const keepSeen = useRef((_at: number) => undefined as undefined)
  keepSeen.current = (at) => {
    drafts.set('seenAt', String(at))
  }
  // biome-ignore lint/correctness/useExhaustiveDependencies: the moment kept from the last visit is read once
  useEffect(() => {
    if (!ready) return undefined
    if (heardTo.current === null)
      heardTo.current = Number.isFinite(seenAt) ? Math.min(seenAt, now()) : now()
    const beat = () => {
      const at = now()
      const since = heardTo.current ?? at
      const known = stillCalled(called.current, latest.current.alarms, at)
      const due = rungBetween(latest.current.alarms, since, at).filter(({ key }) => !known.has(key))
      called.current = new Map([...known, ...due.map((alarm) => [alarm.key, alarm.at] as const)])
      const away = at - since > awayMilliseconds
      const silent = document.visibilityState !== 'visible' && bell.heard() !== 'on'
      if (due.length > 0 && (away || silent))
        setMissed((before) => [
          ...before.filter(({ key }) => due.every((alarm) => alarm.key !== key)),
          ...due.map((alarm) => ({
            key: alarm.key,
            at: alarm.at,
            text: latest.current.words(alarm),
          })),
        ])
      else for (const alarm of due) call(latest.current.words(alarm), alarm.key)
      heardTo.current = at
    }
    const left = () => keepSeen.current(heardTo.current ?? now())
    const shown = () => {
      if (document.visibilityState === 'visible') beat()
      else left()
    }
    beat()
    const timer = setInterval(beat, 1000)
    const keeper = setInterval(left, 60_000)
    document.addEventListener('visibilitychange', shown)
    window.addEventListener('pagehide', left)
    return () => {
      clearInterval(timer)
      clearInterval(keeper)
      document.removeEventListener('visibilitychange', shown)
      window.removeEventListener('pagehide', left)
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
      forgetMissed: () => setMissed([]),
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
