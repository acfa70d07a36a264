import type { NatsConnection } from '@nats-io/nats-core'
import { sessionUnsealed } from '@/core/seal/sealed.ts'
import { onShuffledPlates } from '@/core/trial/served-at-table.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { giveOut } from '@/slip-host/give-out.ts'
import { noticeUnder } from '@/table/subjects.ts'
import { answered } from './answered.ts'
import { planHolder } from './hand-plan.ts'
import { paused } from './held-line.ts'
import type { Notice } from './messages.ts'
import { piecesOfCopy } from './packed-copy.ts'
import { type HelpingPart, helps, partCopy } from './part-copy.ts'
import type { TableServices } from './services.ts'
import type { Invited, OwnTable, TableStore } from './table-store.ts'
import { watchedOf } from './watched.ts'
import { wrappedBy } from './wrapped.ts'

/** Presses often come several at once: a notice waits so long for the next. */
const gatherMilliseconds = 60

/** What the owner's device tells each login: the whole state of what it may know, whenever that has changed. */
export class NoticeBoard {
  private readonly dueLogins = new Set<string>()
  /** What each login was told last over this line, apart from when. */
  private readonly told = new Map<string, string>()
  private readonly copies = new Map<HelpingPart, { text: string; pieces: string[]; at: number }>()
  private readonly sentCopy = new Map<string, number>()
  private whole: WholeTrial | null = null
  private own: OwnTable | null = null
  private work: Promise<void> | null = null
  private readonly ended = new AbortController()

  private readonly services: TableServices
  private readonly trialId: string
  private readonly line: NatsConnection

  constructor(services: TableServices, trialId: string, line: NatsConnection) {
    this.services = services
    this.trialId = trialId
    this.line = line
  }

  /** The trial or the table as it stands now. */
  see(whole: WholeTrial, own: OwnTable): void {
    this.whole = whole
    this.own = own
    for (const { login, revokedAt } of own.invited)
      if (revokedAt === null) this.dueLogins.add(login.name)
    this.go()
  }

  /** A login has said something: it is told how far it was taken in, changed or not. */
  due(login: string): void {
    this.told.delete(login)
    this.dueLogins.add(login)
    this.go()
  }

  /** Tells nothing more; resolves once what was begun is done. */
  async done(): Promise<void> {
    this.ended.abort()
    await this.work
  }

  private go(): void {
    this.work ??= this.tellAll()
      .catch(this.services.onFailure)
      .finally(() => {
        this.work = null
        if (this.dueLogins.size > 0 && !this.ended.signal.aborted) this.go()
      })
  }

  private async tellAll(): Promise<void> {
    await paused(gatherMilliseconds, this.ended.signal)
    for (const login of [...this.dueLogins]) {
      if (this.ended.signal.aborted || this.line.isClosed()) return
      this.dueLogins.delete(login)
      const invited = this.own?.invited.find((each) => each.login.name === login)
      if (invited && this.whole && this.own) await this.tell(invited, this.own)
    }
  }

  private async tell(invited: Invited, own: OwnTable): Promise<void> {
    const { store, notebook, now } = this.services
    const login = invited.login.name
    const heard = await store.heard.where({ trialId: this.trialId }).toArray()
    const seats = heard.filter((each) => each.login === login)
    // Read after the receipts: a copy holds all that its notice says to be in.
    const whole = await notebook.wholeTrial(this.trialId, this.whole)
    if (!whole) return
    const copy = helps(invited.part) ? await this.copyOf(invited.part, whole) : null
    const said: Omit<Notice, 'at'> = {
      receipts: Object.fromEntries(seats.map(({ seat, receipt }) => [seat, receipt])),
      refused: seats.flatMap(({ seat, refused }) => refused.map((each) => ({ seat, ...each }))),
      copy: copy && { version: copy.at, of: copy.pieces.length },
      ...(helps(invited.part) ? { planAt: planAtLogin(own, login) } : {}),
      slip: await this.slipOf(invited, whole),
      watched: invited.part === 'watch' ? watchedOf(whole) : null,
      closed: false,
    }
    const text = JSON.stringify(said)
    if (this.told.get(login) === text) return
    if (copy && this.sentCopy.get(login) !== copy.at) {
      for (const [at, data] of copy.pieces.entries())
        if (!(await this.send(invited, own, at + 1, { version: copy.at, data }))) return
      this.sentCopy.set(login, copy.at)
    }
    if (await this.send(invited, own, 0, { at: now(), ...said })) this.told.set(login, text)
  }

  /** The copy of a part; it gets a later number whenever it says something new. */
  private async copyOf(part: HelpingPart, whole: WholeTrial) {
    const known = this.copies.get(part)
    const copy = partCopy(whole, part)
    // The number of changes alone is nothing to send a trial for.
    const text = JSON.stringify({ ...copy, trial: { ...copy.trial, revision: 0 } })
    if (known?.text === text) return known
    const at = await nextNotice(this.services.store, this.trialId)
    const fresh = { text, at, pieces: piecesOfCopy(copy) }
    this.copies.set(part, fresh)
    return fresh
  }

  /** A taster's ballot for the session that is tasted or comes to be; none for plates that only the baker turns. */
  private async slipOf({ tasterId }: Invited, whole: WholeTrial): Promise<string | null> {
    const session = whole.sessions.toSorted((a, b) => a.number - b.number).at(-1)
    if (tasterId === null || !session || sessionUnsealed(whole.events, session.id)) return null
    if (onShuffledPlates(planOfSession(whole, session))) return null
    const { notebook, now, draw } = this.services
    return await giveOut({ notebook, now: now(), draw }, whole, session.id, tasterId)
  }

  /** Sends one piece; false where the hub did not take it, and it is due again. */
  private async send(
    { login, secret }: Invited,
    own: OwnTable,
    piece: number,
    message: unknown,
  ): Promise<boolean> {
    const { store } = this.services
    const count = await nextNotice(store, this.trialId)
    const subject = noticeUnder(login.name, piece)
    const { toDevice } = await wrappedBy(secret)
    const outside = { table: own.table, subject, count }
    const bytes = await toDevice.close(outside, JSON.stringify(message))
    const answer = await answered(this.line, subject, bytes)
    const sent = answer !== null && answer.json<{ error?: unknown }>().error === undefined
    if (!sent && !this.line.isClosed()) {
      await paused(1000, this.ended.signal)
      this.dueLogins.add(login.name)
    }
    return sent
  }
}

/** The seat of a login that the plan was handed to; null where it is changed elsewhere. */
function planAtLogin(own: OwnTable, login: string): string | null {
  const holder = planHolder(own)
  return holder?.login === login ? holder.seat : null
}

/** The next number of a notice or a copy of this table. */
async function nextNotice(store: TableStore, trialId: string): Promise<number> {
  return await store.transaction('rw', store.counts, async () => {
    const kept = await store.counts.get(trialId)
    const notices = (kept?.notices ?? 0) + 1
    await store.counts.put({ foreign: 0, repeated: 0, ...kept, trialId, notices })
    return notices
  })
}
