import { createContext, useContext } from 'react'
import type { Draft } from '@/app/kit/field/use-draft.ts'
import type { Hands } from '@/core/clock-plan/whose-hands.ts'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { AgendaItem } from '@/core/session/agenda.ts'
import type { Standing } from '@/core/session/effective-events.ts'
import type { MovedOn } from '@/core/session/press/moved-on.ts'
import type { BenchEntry } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** Why a press was not logged. */
export type NotLogged =
  | { why: 'moved-on'; movedOn: MovedOn }
  | { why: 'failed'; reason: FailureReason | null; detail: string }

export interface Bench {
  whole: WholeTrial
  plan: Plan
  session: Session
  /** Names this device in the log. */
  device: string
  /** The codes of this session are kept and the cover is on: letters alone, no level, weight or key. */
  covered: boolean
  /** Its cups were shuffled and no ticket is turned: which level a letter is stands nowhere, and nothing can be uncovered. */
  unknown: boolean
  /** The session's log as it stands: corrections applied, what was undone left out. */
  events: readonly Standing[]
  /** Stores at once; several entries of one press are kept all or none. False where it was not kept, which is said. */
  log: (...entries: BenchEntry[]) => Promise<boolean>
  /** Why the last press was not logged; null once one is. */
  notLogged: NotLogged | null
  /** Typed but unfinished input of this session. */
  drafts: Draft
  /** When something is done by the day as it was made anew last (UTC ms); null where nothing tells. */
  goesAt: (item: AgendaItem) => number | null
  /** Whose hands a step is for by the day that is followed; undefined where nobody helps by the hour. */
  handsOf: (work: Pick<AgendaItem, 'unit' | 'batchId' | 'step' | 'repeat'>) => Hands | undefined
}

export const BenchContext = createContext<Bench | null>(null)

/** The session that is being worked. Throws outside the Bench: a programmer's mistake. */
export function useBench(): Bench {
  const bench = useContext(BenchContext)
  if (!bench) throw new Error('useBench outside of the bench')
  return bench
}
