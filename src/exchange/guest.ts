import type { NatsConnection } from '@nats-io/nats-core'
import { liveQuery } from 'dexie'
import { saysSame } from '@/core/record/says-same.ts'
import { saysEverySeconds } from '@/core/table/presence.ts'
import { noReceipt, waiting } from '@/core/table/receipt.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import type { Invitation } from '@/table/invitation.ts'
import { askedUnder, hereUnder, noticeUnder, sendsUnder } from '@/table/subjects.ts'
import { answered } from './answered.ts'
import { paused } from './held-line.ts'
import { copyPieceShape, noticeShape, readMessage } from './messages.ts'
import { ownEntries } from './own-entries.ts'
import { copyOfPieces } from './packed-copy.ts'
import { helps } from './part-copy.ts'
import type { TableServices } from './services.ts'
import type { JoinedTable, Waiting } from './table-store.ts'
import type { Wrapped } from './wrapped.ts'

/** After so long without the owner's receipt an entry is sent again, while the owner is there. */
const againMilliseconds = 15_000

/** One device at one line. */
export class Guest {
  private readonly pieces = new Map<number, Map<number, string>>()
  private applied = 0
  /** The copy that was taken in last, and what of it stayed as this device wrote it. */
  private last: { whole: WholeTrial; kept: ReadonlySet<string> } | null = null
  private asked = 0
  private work: Promise<void> = Promise.resolve()
  private readonly login: string
  private readonly sendsUnder: string | null

  private readonly services: TableServices
  private readonly table: string
  private readonly invitation: Invitation
  private readonly wrapped: Wrapped

  constructor(services: TableServices, table: string, invitation: Invitation, wrapped: Wrapped) {
    this.services = services
    this.table = table
    this.invitation = invitation
    this.wrapped = wrapped
    this.login = invitation.login.name
    this.sendsUnder = sendsUnder(invitation.part, this.login)
  }

  async at(line: NatsConnection, ended: AbortSignal): Promise<void> {
    const begunAt = this.services.now()
    const inTurn = (act: () => Promise<void>) => {
      this.work = this.work.then(act).catch((failure) => this.services.onFailure(failure))
      return this.work
    }
    const heard = line.subscribe(noticeUnder(this.login, 0).replace(/0$/, '*'), {
      callback: (failure, message) => {
        if (failure || ended.aborted) return
        const piece = Number(message.subject.split('.').at(-1))
        void inTurn(() => this.take(line, piece, message.data, true))
      },
    })
    await inTurn(() => this.ask(line, 0))
    await this.sayHere(line)
    const changed = liveQuery(() =>
      this.services.store.waiting.where({ table: this.table }).primaryKeys(),
    ).subscribe(() => void inTurn(() => this.send(line, begunAt)))
    try {
      for (let beats = 1; !ended.aborted; beats += 1) {
        await paused(1000, ended)
        if (ended.aborted) break
        if (beats % saysEverySeconds === 0) await this.sayHere(line)
        await inTurn(() => this.send(line, begunAt))
      }
    } finally {
      changed.unsubscribe()
      heard.unsubscribe()
      await this.work
    }
  }

  /** Asks for the newest state of a piece; what is not there yet comes by itself later. */
  private async ask(line: NatsConnection, piece: number): Promise<void> {
    const answer = await answered(line, askedUnder(this.login, piece), '')
    if (!answer || answer.headers?.hasError) return
    await this.take(line, piece, answer.data, false)
  }

  private async take(
    line: NatsConnection,
    piece: number,
    bytes: Uint8Array,
    live: boolean,
  ): Promise<void> {
    const { store, now } = this.services
    const subject = noticeUnder(this.login, piece)
    const opened = await this.wrapped.toDevice.open({ table: this.table, subject }, bytes)
    const joined = await store.joined.get(this.table)
    if (!opened.ok || !joined) return
    if (opened.count < (joined.notices[piece] ?? 0)) return
    const notices = { ...joined.notices, [piece]: opened.count }
    if (piece > 0) {
      const part = readMessage(copyPieceShape, opened.text)
      if (!part) return
      const parts = this.pieces.get(part.version) ?? new Map<number, string>()
      this.pieces.set(part.version, parts.set(piece, part.data))
      await store.joined.update(this.table, { notices })
      await this.apply(line, joined)
      return
    }
    const notice = readMessage(noticeShape, opened.text)
    if (!notice) return
    const receipt = notice.receipts[joined.seat] ?? noReceipt
    await store.transaction('rw', store.joined, store.waiting, async () => {
      await store.joined.update(this.table, {
        ...{ notice, notices, receipt },
        ...(live ? { ownerHeardAt: now() } : {}),
      })
      const kept = new Set(waiting(receipt, joined.written))
      await store.waiting
        .where({ table: this.table })
        .filter(({ count }) => count <= joined.written && !kept.has(count))
        .delete()
    })
    await this.apply(line, { ...joined, notice })
    await this.settle()
  }

  /** Takes the copy in once all its pieces are there; asks for those that are not. */
  private async apply(line: NatsConnection, { notice }: JoinedTable): Promise<void> {
    const copy = notice?.copy
    if (!copy || copy.version <= this.applied || !helps(this.invitation.part)) return
    const parts = this.pieces.get(copy.version) ?? new Map<number, string>()
    const texts = Array.from({ length: copy.of }, (_, at) => parts.get(at + 1))
    const missing = texts.flatMap((text, at) => (text === undefined ? [at + 1] : []))
    if (missing.length > 0) {
      if (this.asked === copy.version) return
      this.asked = copy.version
      for (const piece of missing) await this.ask(line, piece)
      return
    }
    const whole = copyOfPieces(texts.map((text) => text ?? ''))
    if (!whole) return
    await this.takeIn(whole)
    this.applied = copy.version
    this.pieces.clear()
    await this.services.store.joined.update(this.table, { trialId: whole.trial.id })
  }

  /** What was written here and has not come to the owner yet stays as it is. */
  private async takeIn(whole: WholeTrial): Promise<void> {
    const { store, notebook } = this.services
    const rows = await store.waiting.where({ table: this.table }).toArray()
    const joined = await store.joined.get(this.table)
    const { device } = await notebook.settings()
    const here = await notebook.wholeTrial(whole.trial.id)
    // Written here and not even put out yet: it waits too.
    const unsent = here ? ownEntries(here, device, joined?.putOut ?? 0) : []
    const kept = new Set([
      ...rows.flatMap(({ eventId }) => eventId ?? []),
      ...unsent.map(({ eventId }) => eventId),
    ])
    const { planWaits } = await notebook.takeCopy(whole, kept, joined?.planBase)
    // What waits here of the plan began from what was told before.
    if (!planWaits) await store.joined.update(this.table, { planBase: planInForce(whole) })
    this.last = { whole, kept: planWaits ? kept.add(planWaits) : kept }
  }

  /** Of an entry that is in by now the owner's word stands here too, once the copy is here that holds it. */
  private async settle(): Promise<void> {
    const { store, notebook } = this.services
    const joined = await store.joined.get(this.table)
    if (!this.last || joined?.notice?.copy?.version !== this.applied) return
    const { whole, kept } = this.last
    const rows = await store.waiting.where({ table: this.table }).toArray()
    const waits = new Set(rows.map(({ eventId }) => eventId))
    const plan = await notebook.planMadeHere(whole.trial.id)
    // A plan of this device that was handed over and is not what the owner tells: it was not taken in so.
    const otherPlan = plan && !waits.has(plan.id) && !saysSame(plan, planInForce(whole))
    if (otherPlan || [...kept].some((id) => !waits.has(id))) await this.takeIn(whole)
  }

  /** A plan as it stands just before it goes: from here on a newer one is an entry of its own. */
  private async asItGoes(row: Waiting): Promise<Waiting> {
    const { waiting } = this.services.store
    const key: [string, number] = [row.table, row.count]
    await waiting.update(key, { going: true })
    return (await waiting.get(key)) ?? row
  }

  private async sayHere(line: NatsConnection): Promise<void> {
    const { store, now } = this.services
    const joined = await store.joined.get(this.table)
    if (!joined) return
    const subject = hereUnder(this.login)
    const said = { seat: joined.seat, sentAt: now(), written: joined.written }
    const outside = { table: this.table, subject, count: 0 }
    line.publish(subject, await this.wrapped.fromDevice.close(outside, JSON.stringify(said)))
  }

  /** Sends what waits, in its order: what this line has not carried yet, what is missing, and what was not answered for long. */
  private async send(line: NatsConnection, begunAt: number): Promise<void> {
    const { store, now } = this.services
    const subject = this.sendsUnder
    const joined = await store.joined.get(this.table)
    if (!subject || !joined || line.isClosed()) return
    const rows = await store.waiting.where({ table: this.table }).sortBy('count')
    const ownerThere = joined.ownerHeardAt !== null && now() - joined.ownerHeardAt < 60_000
    for (const read of rows) {
      const row = read.planBase ? await this.asItGoes(read) : read
      const since = row.sentAt === null ? Number.POSITIVE_INFINITY : now() - row.sentAt
      const due = row.sentAt === null || row.sentAt < begunAt
      const late = ownerThere && since > againMilliseconds
      const missing = joined.receipt.missing.includes(row.count) && since > 2000
      if (!due && !late && !missing) continue
      const said = { seat: joined.seat, sentAt: now(), entry: JSON.parse(row.text) }
      const outside = { table: this.table, subject, count: row.count }
      const bytes = await this.wrapped.fromDevice.close(outside, JSON.stringify(said))
      if (!(await taken(line, subject, bytes))) return
      await store.waiting.update([row.table, row.count], { sentAt: now() })
    }
  }
}

/** Whether the hub has taken a message; where it has not, it is sent again later and nothing is lost. */
async function taken(line: NatsConnection, subject: string, bytes: Uint8Array): Promise<boolean> {
  const answer = await answered(line, subject, bytes)
  return answer !== null && answer.json<{ error?: unknown }>().error === undefined
}
