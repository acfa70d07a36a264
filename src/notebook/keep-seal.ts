import { breaksSeal } from '@/core/seal/breaks-seal.ts'
import { beginsMix, locked } from '@/core/seal/lock.ts'
import type { Event } from '@/core/session/event-record.ts'
import { lasts } from '@/core/session/lasting.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { tastingState } from '@/core/tasting/tasting-state.ts'
import { toTurn } from '@/core/tasting/to-turn.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Store } from './store.ts'
import { storedTrial } from './stored-trial.ts'

/**
 * The lock that belongs beside these entries: when one of them begins a mix and the trial is not locked. The log is looked at only
 * when a mix begins.
 */
export async function lockBeside(
  store: Store,
  trialId: string,
  held: WholeTrial | undefined,
  entries: readonly NewEvent[],
): Promise<NewEvent[]> {
  const starts = entries.filter(({ kind }) => kind === 'step-started')
  if (starts.length === 0 || entries.some(({ kind }) => kind === 'lock')) return []
  const plans = held?.plans ?? (await store.plans.where({ trialId }).toArray())
  const mix = starts.find((entry) => beginsMix(entry, plans))
  if (!mix) return []
  const { events, ballots } = held ?? (await logAndBallots(store, trialId))
  if (locked({ plans, events, ballots })) return []
  const { sessionId } = mix
  return [{ kind: 'lock', trialId, sessionId, about: { kind: 'trial', id: trialId } }]
}

async function logAndBallots(store: Store, trialId: string) {
  const [events, ballots] = await Promise.all([
    store.events.where({ trialId }).toArray(),
    store.ballots.where({ trialId }).toArray(),
  ])
  return { events, ballots }
}

/**
 * Refuses what the seal forbids of entries whose references are known to hold: taking back or correcting what lasts, a lasting
 * entry with a time or a citation of its own, an unsealing while somebody is awaited. The log is read only when one of them
 * cites an early close or unseals.
 */
export async function refuseBrokenSeal(
  store: Store,
  trialId: string,
  entries: readonly NewEvent[],
): Promise<void> {
  for (const entry of entries) {
    if (lasts(entry) && (entry.at !== undefined || entry.corrects !== undefined))
      throw new NotebookFailure(
        'refused-record',
        'what lasts bears the present time and cites nothing',
      )
    if (entry.corrects !== undefined) await refuseHiding(store, trialId, entry.corrects)
    if (entry.kind === 'unsealed') await refuseEarly(store, trialId, entry)
  }
}

async function refuseHiding(store: Store, trialId: string, corrects: string): Promise<void> {
  const cited = await store.events.get(corrects)
  if (!cited || (!lasts(cited) && cited.kind !== 'tasting-closed')) return
  const events: Event[] = lasts(cited) ? [cited] : await store.events.where({ trialId }).toArray()
  if (breaksSeal({ corrects }, events)) throw new NotebookFailure('lasting', cited.kind)
}

async function refuseEarly(
  store: Store,
  trialId: string,
  { sessionId, lost }: Extract<NewEvent, { kind: 'unsealed' }>,
): Promise<void> {
  const whole = await storedTrial(store, trialId)
  if (!whole || sessionId === null)
    throw new NotebookFailure('refused-record', 'an unsealing belongs to a session')
  const { mayUnseal } = tastingState(whole, sessionId)
  if (!mayUnseal.ok) throw new NotebookFailure('still-awaited', mayUnseal.reason)
  const wanted = toTurn(whole, sessionId)
  if (lost !== undefined && (!wanted || lost.trim() === ''))
    throw new NotebookFailure(
      'refused-record',
      'what was never shuffled is not lost, and a loss has its reason',
    )
  if (wanted && lost === undefined)
    throw new NotebookFailure('refused-record', 'what was shuffled is not turned')
}
