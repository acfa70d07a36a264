import type { House } from '@/core/house/house-record.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Photo } from '@/core/session/photo-record.ts'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Follows } from '@/core/trial/trial-record.ts'
import type { PartCounts, TrialComparison } from '@/core/whole-trial/compare-trials.ts'
import type { MergeConflict } from '@/core/whole-trial/merge-conflict.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { FileTrouble } from '@/trial-file/trouble.ts'
import type { ArrivingPlan, TookPlan } from './arriving-plan.ts'
import type { BackedUp } from './back-up.ts'
import type { BackupState } from './backup-state.ts'
import type { BookChoices, BookPage, BookPageAsked, Shelf } from './book-page.ts'
import type { ChainLink } from './chains.ts'
import type { HeldInBackup } from './held-in-backup.ts'
import type { LongWork } from './long-work.ts'
import type { DoughToMakeAgain } from './make-again.ts'
import type { RestoreRecord, WouldRestore } from './restore-record.ts'
import type { Settings } from './settings-record.ts'
import type { Summary } from './summary-record.ts'
import type { ArrivingEntry, TookEntry } from './take-entry.ts'
import type { TurnedOver } from './turn-over.ts'

/** A ballot as a taster seals it: the notebook adds id, device, count and time. */
export type NewBallot = Omit<Ballot, 'id' | 'device' | 'count' | 'at'>

/** What came of keeping a plan. */
export interface KeptPlan {
  plan: Plan
  /** True when it became a revision of its own. */
  newRevision: boolean
  /** True when that was because a session runs the revision before. */
  inUse: boolean
  /** Fields that another window had changed too, and that stand now as they were given. */
  conflicts: string[]
  /** The plan as it would be with the other window's word in those fields; null where nothing clashed. */
  other: Plan | null
  /** The trial's revision with it. */
  trialRevision: number
}

export type ImportOutcome =
  | { ok: true; trialId: string; already: boolean }
  | {
      ok: false
      reason: 'same-id-different-content'
      trialId: string
      /** How the file's copy stands to the one here; missing, with the rest, when only single ids clash. */
      compared?: TrialComparison
      /** The tasting here is under seal, and a copy beside it would show what is covered. */
      uncovers?: boolean
      /** The one here was thrown out. */
      binned?: boolean
    }
  | { ok: false; reason: 'trouble'; troubles: FileTrouble[] }

/** What came in of another copy of a trial that stands here, and what could not. */
export type TakenIn =
  | { ok: true; trialId: string; taken: PartCounts; conflicts: MergeConflict[] }
  | { ok: false; reason: 'trouble'; troubles: FileTrouble[] }

/** What came of reading a backup: the record of what came in, or nothing at all when it is no backup this app can read. */
export type RestoreOutcome =
  | { ok: true; record: RestoreRecord }
  | { ok: false; reason: 'not-a-backup' }
  | { ok: false; reason: 'newer-version'; found: number; known: number }

export type WouldRestoreOutcome =
  | { ok: true; would: WouldRestore }
  | Exclude<RestoreOutcome, { ok: true }>

/**
 * Everything the app keeps. Reads may be used inside a live query; each write is one transaction that stores a whole
 * checked record or nothing, and bumps the trial's revision. What cannot be done throws a `NotebookFailure` with its reason.
 * The rules stand in SPEC.md beside this file.
 */
export interface Notebook {
  /** The name of its database. */
  readonly name: string
  /** All trials for the home list, newest work first; binned and archived ones left out unless asked for. */
  summaries(options?: { binned?: boolean; archived?: boolean }): Promise<Summary[]>
  /** The first lines of one shelf, read and checked alone, and how many more there are. */
  bookPage(asked: BookPageAsked): Promise<BookPage>
  /** The shelf a trial lies on now; null where it is here no more. */
  shelfNow(trialId: string): Promise<Shelf | null>
  /** The kinds of factor and the flours that its lines can be sorted out by. */
  bookChoices(): Promise<BookChoices>
  /** Reads what a search will look through, ahead of its first letter. A live query may use it. */
  readySearch(): Promise<void>
  /** Every line of questions, from two trials on: the one worked on last first, its first question first. */
  chains(): Promise<ChainLink[][]>
  /** The newest trials that something was made of and whose codes are not kept; ids. */
  newestBegun(most: number): Promise<string[]>
  /**
   * A trial with everything that belongs to it. Given what was `held` of it from the last time, a record that says the same
   * is the same object, and only what is new is read and checked; so are the lists, and the whole when nothing is new. `null`
   * where it is being opened and nothing is held yet: then it is held here from the first reading on.
   */
  wholeTrial(trialId: string, held?: WholeTrial | null): Promise<WholeTrial | undefined>
  /** A new trial around its first plan; returns the trial's id. The plan's ids must be new ones. */
  createTrial(plan: Plan, options?: { follows?: Follows; note?: string }): Promise<string>
  /** Keeps a plan that was changed from `base`: merged by field with what stands, in place or as the next revision. */
  keepPlan(plan: Plan, base?: Plan): Promise<KeptPlan>
  /** Keeps a dealt session, whole; afterwards it is changed by `makeAgain` and `turnOver` alone. */
  beginSession(session: Session): Promise<void>
  /** Makes a failed dough again, with what failed said of it: a new dough of its level, the old one kept. Gives the new dough's id. */
  makeAgain(dough: DoughToMakeAgain): Promise<string>
  /** Unseals a session whose plates or cups were shuffled, with what was found under them. */
  turnOver(found: TurnedOver): Promise<void>
  /** Appends to the log; resolves once it is on disk. */
  log(event: NewEvent): Promise<Event>
  /**
   * Several events of one press, all or none. With `seen`, the ids of the events that stood when the person pressed, a press
   * about which the log has moved on since is refused.
   */
  logAll(events: NewEvent[], seen?: ReadonlySet<string>): Promise<Event[]>
  sealBallot(ballot: NewBallot): Promise<Ballot>
  /** Writes the answer beside the trial in the home list; one found at another revision, or under seal, is not taken. */
  keepAnswer(trialId: string, revision: number, answer: string): Promise<void>
  archive(trialId: string, archived: boolean): Promise<void>
  /** Into the bin and out of it; `erase` is the only true deletion. */
  bin(trialId: string, binned: boolean): Promise<void>
  /** False where it does not lie in the bin, as when it was taken back in another window meanwhile: it stays. */
  erase(trialId: string): Promise<boolean>

  kitchen(): Promise<KitchenThing[]>
  keepKitchenThing(thing: KitchenThing): Promise<void>
  removeKitchenThing(id: string): Promise<void>
  /** Empties a taster's initials for good; their answers stay, without a name. */
  eraseTaster(tasterId: string): Promise<void>

  /** Typed but unfinished input, by a key of the place's own, such as `plan/TRIAL`. */
  draft(key: string): Promise<Record<string, string> | undefined>
  keepDraft(key: string, values: Record<string, string>): Promise<void>
  dropDraft(key: string): Promise<void>

  /** House formulas that are not in the bin, the one changed last first. */
  houses(): Promise<House[]>
  house(id: string): Promise<House | undefined>
  /** Keeps a house formula, new or with a revision more; revisions that were kept are never changed. */
  keepHouse(house: House): Promise<void>
  binHouse(id: string, binned: boolean): Promise<void>

  settings(): Promise<Settings>
  keepSettings(change: Partial<Omit<Settings, 'key' | 'device'>>): Promise<void>

  /** Keeps a photo's record, its picture and the log's line of it, all or none. */
  addPhoto(photo: Photo, picture: Blob, entry?: NewEvent): Promise<void>
  picture(photoId: string): Promise<Blob | undefined>

  /** The trial file's text, byte for byte the same for the same trial. */
  exportTrial(trialId: string): Promise<{ name: string; text: string }>
  importTrial(text: string, options?: { keepBoth?: boolean }): Promise<ImportOutcome>
  /** Opens a sample as a copy with new ids, its stamps shifted so that its last event was three minutes ago. */
  openSample(text: string): Promise<ImportOutcome>
  /** Takes what is new in a trial's file into the trial that stands here under the same id. */
  takeInNew(text: string): Promise<TakenIn>
  /** Takes one entry of another device's log in, as it came over an open table; the same again changes nothing. */
  takeEntry(trialId: string, entry: ArrivingEntry, laterMilliseconds: number): Promise<TookEntry>
  /**
   * Takes in what the baker's device says of a trial that this one helps with, however often. What this device wrote and has
   * not handed over yet (`waiting`, ids) stays as it is here, and so does the plan where it was changed here since `planBase`; its
   * id is given then.
   */
  takeCopy(
    copy: WholeTrial,
    waiting: ReadonlySet<string>,
    planBase?: Plan,
  ): Promise<{ planWaits: string | null }>
  /** Takes a plan in as another device changed it that it was handed to; what was changed here since stands. */
  takePlan(trialId: string, arriving: ArrivingPlan): Promise<TookPlan>
  /** The plan in force where this device made it and no copy has said otherwise of it since. */
  planMadeHere(trialId: string): Promise<Plan | undefined>
  /** All trials, kitchen, settings and photos as one zip, and back. Undefined when it was stopped. */
  backUp(work?: LongWork): Promise<BackedUp | undefined>
  restore(zip: Blob, work?: LongWork & { name?: string }): Promise<RestoreOutcome>
  /** What a restore of this backup would do; nothing is changed. Undefined when it was stopped. */
  wouldRestore(
    zip: Blob,
    work?: LongWork & { name?: string },
  ): Promise<WouldRestoreOutcome | undefined>
  /** How much is newer than the last backup, and that one was made. */
  backupState(): Promise<BackupState>
  keepBackedUp(at: number, held?: HeldInBackup): Promise<void>
  /** What the last restore brought, until it is put away; one without an end runs, or was cut short. */
  restoreRecord(): Promise<RestoreRecord | undefined>
  dropRestoreRecord(): Promise<void>
}

/** A notebook that is open, until it is closed. */
export interface OpenNotebook extends Notebook {
  close(): void
  /** Why it was lost while in use, such as by a newer version in another tab; null as long as it is held. */
  lost: { reason: () => FailureReason | null; subscribe: (listener: () => void) => () => void }
}
