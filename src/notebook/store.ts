import { Dexie, type Table, type Transaction } from 'dexie'
import type { House } from '@/core/house/house-record.ts'
import type { KitchenThing } from '@/core/kitchen/kitchen-record.ts'
import type { FailureReason } from '@/core/record/failure-reason.ts'
import type { Event } from '@/core/session/event-record.ts'
import type { Photo } from '@/core/session/photo-record.ts'
import type { Session } from '@/core/session/session-record.ts'
import type { Ballot } from '@/core/tasting/ballot-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { Trial } from '@/core/trial/trial-record.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Chain } from '@/trial-file/migration.ts'
import { NotebookFailure } from './notebook-failure.ts'
import type { Settings } from './settings-record.ts'
import type { Summary } from './summary-record.ts'

/** This device's running number: the last one given out. */
export interface LastCount {
  key: 'count'
  count: number
}

/** A picture, apart from its record, so that reading the records never loads it. */
export interface Picture {
  id: string
  trialId: string
  blob: Blob
}

export interface Draft {
  key: string
  values: Record<string, string>
}

/** The tables of the first version, by key and index. A later version appends its own; this one is never edited. */
const firstTables = {
  trials: 'id',
  plans: 'id, trialId',
  sessions: 'id, trialId',
  events: 'id, trialId',
  ballots: 'id, trialId',
  photos: 'id, trialId',
  pictures: 'id, trialId',
  kitchen: 'id',
  drafts: 'key',
  settings: 'key',
  summaries: 'trialId',
}

/** What version 3 adds: house formulas; the home list by its newest work, and the shelves, without reading a trial. */
const tablesOf: Readonly<Record<number, Record<string, string>>> = {
  3: { trials: 'id, archivedAt, binnedAt', summaries: 'trialId, lastAt', houses: 'id' },
}

/** Opens databases, but never one that is newer than the version asked for. */
const neverNewer = {
  open(name: string, version?: number): IDBOpenDBRequest {
    if (version === undefined) throw new NotebookFailure('newer-database')
    return indexedDB.open(name, version)
  },
  deleteDatabase: (name: string) => indexedDB.deleteDatabase(name),
  databases: () => indexedDB.databases(),
  cmp: (a: unknown, b: unknown) => indexedDB.cmp(a, b),
}

/** The steps that bring older notebooks up, loaded only when one is met: a present one never needs them. */
export interface LateChain {
  version: number
  load: () => Promise<Chain>
}

/** The database of one notebook. */
export class Store extends Dexie {
  declare trials: Table<Trial, string>
  declare plans: Table<Plan, string>
  declare sessions: Table<Session, string>
  declare events: Table<Event, string>
  declare ballots: Table<Ballot, string>
  declare photos: Table<Photo, string>
  declare pictures: Table<Picture, string>
  declare kitchen: Table<KitchenThing, string>
  declare drafts: Table<Draft, string>
  declare houses: Table<House, string>
  declare settings: Table<Settings | LastCount, string>
  declare summaries: Table<Summary, string>
  /** The trial that was last read or changed here, its records checked: so that the next change need not read them again. */
  held: WholeTrial | undefined
  /** All lines of the home list as they were last read, until one of them changes, here or in another tab. */
  heldLines: readonly Summary[] | undefined
  /** How often lines changed since this was opened: what is read while it moves on is not held. */
  linesChanged = 0
  /** Why it was closed, once it was. */
  closedBecause: FailureReason = 'closed'
  /** Told when the notebook is lost while it is in use. */
  onLost: (() => void) | null = null
  private isOpened = false
  private leaving = false

  constructor(name: string, chain: LateChain) {
    // Strict: a write is told as kept once it is on the disk, not once the system has promised to write it.
    super(name, { indexedDB: neverNewer, chromeTransactionDurability: 'strict' })
    this.version(1).stores(firstTables)
    for (let to = 2; to <= chain.version; to++) this.add(to, chain)
    this.on('versionchange', (change) =>
      this.letGo(change.newVersion ? 'closed-by-newer' : 'cleared'),
    )
    // At each opening: a page that rests in the browser's back/forward cache closes and opens again, which is no loss.
    this.on('ready', () => this.watchClosing(), true)
    // Cleared while such a page rested: it must not be made anew, empty, as if nothing had been.
    this.on('populate', () => {
      if (!this.isOpened) return
      this.letGo('cleared')
      throw new NotebookFailure('cleared')
    })
    this.on('blocked', () => this.letGo('blocked'))
    Dexie.on('storagemutated', this.forgetLines)
  }

  /** A connection tells of its closing where nobody here closed it: the browser threw the site's data away. */
  private watchClosing(): void {
    this.isOpened = true
    // After Dexie's own listener, which leaves the way open to open it again.
    this.backendDB().addEventListener('close', () =>
      queueMicrotask(() => this.leaving || this.letGo('cleared')),
    )
  }

  /** Told of every change in this browser, before the live queries are: those then read anew. After a rest all may have changed. */
  private forgetLines = (changed: object): void => {
    const ours = `idb://${this.name}/summaries/`
    if (!('all' in changed) && !Object.keys(changed).some((part) => part.startsWith(ours))) return
    this.linesChanged += 1
    this.heldLines = undefined
  }

  private add(to: number, chain: LateChain): void {
    this.version(to)
      .stores(tablesOf[to] ?? {})
      .upgrade(async (transaction: Transaction) => {
        const [{ migrations }, { upgradeStored }] = await Dexie.waitFor(
          Promise.all([chain.load(), import('./upgrade-stored.ts')]),
        )
        const step = migrations.find((each) => each.to === to)
        if (!step) throw new Error(`no migration leads to version ${to}`)
        await upgradeStored(transaction, step)
      })
  }

  /** Closes it as asked. */
  leave(): void {
    this.leaving = true
    Dexie.on.storagemutated.unsubscribe(this.forgetLines)
    this.close()
  }

  private letGo(reason: FailureReason): false {
    this.closedBecause = reason
    this.leave()
    this.onLost?.()
    return false
  }
}
