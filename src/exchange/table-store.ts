import { Dexie, type Table } from 'dexie'
import type { Receipt } from '@/core/table/receipt.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import type { HubCode } from '@/table/hub-code.ts'
import type { Login, Ticket } from '@/table/invite-login.ts'
import type { Part } from '@/table/subjects.ts'
import type { Notice } from './messages.ts'

/** One login of a table as its owner keeps it. */
export interface Invited {
  login: Login
  part: Part
  /** Whose ballots it brings; null for a helper. */
  tasterId: string | null
  /** Null where nothing is sealed: for pages on plain http. */
  secret: Uint8Array | null
  madeAt: number
  revokedAt: number | null
}

/** A table that this device opened. There is one of each trial. */
export interface OwnTable {
  trialId: string
  table: string
  ticket: Ticket
  /** By which the hub may be asked to revoke a login or to forget the table. */
  hub: HubCode
  owner: Login
  master: Uint8Array
  openedAt: number
  invited: Invited[]
  /** Devices to which the plan was handed, the newest last; left out where it never was. */
  planSeats?: PlanSeat[]
}

/** A device to which the plan was handed: it is changed there alone until it was taken back. */
export interface PlanSeat {
  login: string
  seat: string
  takenBackAt: number | null
}

/** What is counted of a table that this device opened. */
export interface TableCounts {
  trialId: string
  /** The last number that a notice had: they only rise. */
  notices: number
  /** Messages that did not open, or were none. */
  foreign: number
  /** Messages that came again, or so far ahead that the gap before them is not kept. */
  repeated: number
}

/** What the owner has heard of one seat at a login. */
export interface HeardSeat {
  key: string
  trialId: string
  login: string
  seat: string
  receipt: Receipt
  lastHeardAt: number
  /** How many entries it says that it has written. */
  written: number
  /** How much later the hub's clock stands, in milliseconds; null before its first entry. */
  clockLater: number | null
  /** How much later the owner's clock stands than this device's, in milliseconds; left out before its first entry. */
  ownerLater?: number
  refused: { count: number; reason: string }[]
}

/** A table at which this device has a part. */
export interface JoinedTable {
  table: string
  /** The invitation as its link's text. */
  invitation: string
  page: string
  part: Part
  seat: string
  joinedAt: number
  /** The trial it helps with, once it was told; null for a taster and before. */
  trialId: string | null
  /** The last entry of its own notebook that was put out, by this device's running number. */
  putOut: number
  /** Entries written so far. */
  written: number
  receipt: Receipt
  /** By piece, the number of the last notice that was taken: an older one is passed over. */
  notices: Record<string, number>
  notice: Notice | null
  /** The plan as the owner last told it or as it was last put out from here: what a change of it began from. */
  planBase?: Plan
  /** When the owner was last heard, by this device's clock. */
  ownerHeardAt: number | null
}

/** An entry that waits until the owner has said that it is in. */
export interface Waiting {
  table: string
  count: number
  /** The id of the log entry that it brings, or of the plan; null for ballots. */
  eventId: string | null
  /** Of a plan: what it began from. */
  planBase?: Plan
  /** Of a plan: it is on its way, so that a newer one is an entry of its own. */
  going?: true
  text: string
  sentAt: number | null
}

/** What a device keeps of open tables, apart from the notebook: it goes into no file and no backup. */
export class TableStore extends Dexie {
  declare own: Table<OwnTable, string>
  declare counts: Table<TableCounts, string>
  declare heard: Table<HeardSeat, string>
  declare joined: Table<JoinedTable, string>
  declare waiting: Table<Waiting, [string, number]>

  constructor(name = 'evenhand-tables') {
    super(name, { chromeTransactionDurability: 'strict' })
    this.version(1).stores({
      ...{ own: 'trialId', counts: 'trialId', heard: 'key, trialId' },
      ...{ joined: 'table', waiting: '[table+count], table' },
    })
  }
}

export const heardKey = (trialId: string, login: string, seat: string): string =>
  `${trialId}/${login}/${seat}`
