import type { AgendaItem } from '@/core/session/agenda.ts'
import type { OvenCue } from '@/core/session/oven/oven-cues.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { stepText } from './event-text.ts'

/** What an alarm calls to: "D: Fold 3 of 3 is over", "Pull B", "C: Mix begins". No level is named: it may stand on a locked screen. */
export function alarmText(
  { step, repeat, do: what, due }: Pick<AgendaItem, 'step' | 'repeat' | 'do' | 'due'>,
  plan: Pick<Plan, 'steps'>,
  letter: string,
): string {
  const name = stepText(plan, step.id, repeat)
  if (step.kind === 'bake') return what === 'end' ? `Pull ${letter}` : `Launch ${letter}`
  if (what === 'start') return `${letter}: ${name} begins`
  return due === 'expected' ? `${letter}: look at ${name}` : `${letter}: ${name} is over`
}

/** What came due unheard, told at return: of an alarm in its words, due at an hour as it is shown, so many seconds late; from a minute on in whole ones. */
export function unheardText(alarm: string, dueTime: string, lateSeconds: number): string {
  const late = lateSeconds < 60 ? lateSeconds : Math.round(lateSeconds / 60) * 60
  return `${alarm}, due at ${dueTime}, while this page could not ring: told ${durationText(late)} late.`
}

const cues = { turn: 'Turn', soon: 'Twenty seconds:', pull: 'Pull' } as const

/** What a voice says at the oven: "Turn B". */
export const cueText = (say: OvenCue['say'], letter: string): string => `${cues[say]} ${letter}`

/** How sound, notes and screen stand on this device. */
export interface RingState {
  sound: 'waiting' | 'on' | 'none'
  notes: 'granted' | 'denied' | 'default' | 'none'
  awake: 'yes' | 'no' | 'asking'
}

/**
 * What rings and what cannot, as it is: a page behind another still rings where the browser lets it run, one that is frozen or on a
 * locked phone does not (measured in Chromium; of other browsers from memory: a locked phone promises nothing).
 */
export function ringText({ sound, notes, awake }: RingState): string[] {
  return [
    {
      waiting:
        'The ring sounds after the first press on this page: before it, browsers give no sound.',
      on: 'Each wait and each bake rings when it is over, louder with the device’s volume.',
      none: 'This browser has no sound for the ring: watch the tabs.',
    }[sound],
    {
      yes: 'The screen stays on while the bench is open.',
      no: 'The browser does not let the screen be kept on: set it to stay on in the device’s settings.',
      asking: '',
    }[awake],
    {
      granted:
        'Behind another page a note of the system comes too, as long as the browser runs this page.',
      denied:
        'Notes of the system were refused in this browser: they can be allowed in its settings for this page.',
      default: '',
      none: 'This browser shows no notes of the system.',
    }[notes],
    'On a locked phone, or when the browser puts the page to sleep, nothing is sure to ring. Keep the screen on, or take the alarms into the phone’s own calendar. What was missed is said when you come back.',
  ].filter(Boolean)
}
