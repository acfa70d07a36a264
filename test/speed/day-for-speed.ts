import type { Event } from '@/core/session/event-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { begun, minutes } from '../trial-of/made-up-day.ts'
import { sessionOf } from '../trial-of/session-of.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** A session in which nothing is done yet but so many notes written, a minute apart, before its first mix. */
export function dayForSpeed(lines: number): WholeTrial {
  const whole = wholeTrialOf()
  const id = `day-${lines}`
  const notes = Array.from({ length: lines }, (_, index): Event => {
    const at = begun + index * minutes
    return {
      ...{ id: `note-${String(index).padStart(5, '0')}`, trialId: id, sessionId: 'session-1' },
      ...{ device: 'device-1', count: index + 1, at, zone: whole.trial.zone },
      ...{ kind: 'note', text: 'smells of apples', about: { kind: 'batch', id: 'batch-1' } },
    }
  })
  return {
    ...whole,
    trial: { ...whole.trial, id, note: '' },
    plans: whole.plans.map((plan) => ({ ...plan, trialId: id })),
    sessions: [{ ...sessionOf(), trialId: id }],
    events: notes,
    ...{ ballots: [], photos: [] },
  }
}
