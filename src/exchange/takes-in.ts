import type * as z from 'zod/mini'
import { clockOffset } from '@/core/table/clock-offset.ts'
import { counted, noReceipt, type Receipt } from '@/core/table/receipt.ts'
import { sendsUnder } from '@/table/subjects.ts'
import { mayHaveChanged } from './hand-plan.ts'
import { hereShape, readMessage, sentShape } from './messages.ts'
import { planOfEntry } from './packed-plan.ts'
import type { Arrived } from './read-arriving.ts'
import type { TableServices } from './services.ts'
import { type HeardSeat, heardKey, type Invited, type OwnTable } from './table-store.ts'
import { takeBallots } from './take-ballots.ts'
import { wrappedBy } from './wrapped.ts'

/** An envelope that opened: what it says, and who says it. */
interface SaidBy<Message> {
  own: OwnTable
  invited: Invited
  message: Message
  count: number
}

/** What the owner's device does with what arrives: proves it, takes it in through the notebook, and counts it. */
export class TakesIn {
  private work: Promise<void> = Promise.resolve()
  /** How much later the owner's clock stands than the hub's, in milliseconds, by the message that took least time. */
  private hubLater: number

  private readonly services: TableServices
  private readonly trialId: string
  /** Told which login is to hear how far it was taken in. */
  private readonly answer: (login: string) => void

  constructor(
    services: TableServices,
    trialId: string,
    answer: (login: string) => void,
    hubLater: number | null,
  ) {
    this.hubLater = hubLater ?? Number.POSITIVE_INFINITY
    this.services = services
    this.trialId = trialId
    this.answer = answer
  }

  /** Takes a message in, after those before it. Rejects where the notebook cannot keep it now: it comes again. */
  take(arrived: Arrived): Promise<void> {
    const done = this.work.then(() => this.takeOne(arrived))
    this.work = done.catch(this.services.onFailure)
    return done
  }

  /** A device says that it is there. */
  async here(subject: string, data: Uint8Array): Promise<void> {
    const said = await this.opened(subject, subject.slice(2), data, hereShape)
    if (!said) return
    const { invited, message } = said
    await this.keep(invited.login.name, message.seat, (heard) => ({
      ...{ ...heard, lastHeardAt: this.services.now(), written: message.written },
    }))
    this.answer(invited.login.name)
  }

  private async takeOne({ subject, data, storedAt }: Arrived): Promise<void> {
    const { now } = this.services
    const said = await this.opened(subject, subject.slice(2), data, sentShape)
    if (!said) return
    const { invited, message, count } = said
    if (sendsUnder(invited.part, invited.login.name) !== subject) return await this.tally('foreign')
    const { name } = invited.login
    const { seat, sentAt, entry } = message
    const later = clockOffset([{ writtenAt: sentAt, arrivedAt: storedAt }]) ?? 0
    this.hubLater = Math.min(this.hubLater, now() - storedAt)
    const before = await this.heardOf(name, seat)
    const clockLater = Math.min(before?.clockLater ?? Number.POSITIVE_INFINITY, later)
    const receipt = before?.receipt ?? noReceipt
    const next = counted(receipt, count)
    if (next.ok) {
      const reason = await this.enter(said, entry, clockLater + this.hubLater)
      await this.keep(name, seat, (heard) => ({
        ...{ ...heard, receipt: next.receipt, clockLater, lastHeardAt: now() },
        ownerLater: Math.round(clockLater + this.hubLater),
        written: Math.max(heard.written, count),
        refused: reason === null ? heard.refused : [...heard.refused, { count, reason }].slice(-64),
      }))
    } else await this.tally('repeated')
    this.answer(name)
  }

  /** Enters it into the notebook; gives why it was not taken, or null. */
  private async enter(
    { own, invited, message: { seat } }: SaidBy<z.output<typeof sentShape>>,
    entry: z.output<typeof sentShape>['entry'],
    later: number,
  ): Promise<string | null> {
    const { notebook } = this.services
    if (entry.kind === 'log') {
      if (invited.part === 'taster') return 'not-of-this-part'
      const { kind: _, ...arriving } = entry
      const took = await notebook.takeEntry(this.trialId, arriving, later)
      return took.ok ? null : took.reason
    }
    if (entry.kind === 'plan') {
      if (!mayHaveChanged(own, invited.login.name, seat)) return 'not-of-this-part'
      const arriving = planOfEntry(entry)
      if (!arriving) return 'does-not-fit'
      const took = await notebook.takePlan(this.trialId, arriving)
      return took.ok ? null : took.reason
    }
    if (invited.part !== 'taster' || invited.tasterId === null) return 'not-of-this-part'
    return await takeBallots(notebook, this.trialId, invited.tasterId, entry)
  }

  /** What an envelope of a known login says; null, and counted, where it does not open or is none. */
  private async opened<Shape extends z.ZodMiniType>(
    subject: string,
    login: string,
    data: Uint8Array,
    shape: Shape,
  ): Promise<SaidBy<z.output<Shape>> | null> {
    const own = await this.services.store.own.get(this.trialId)
    const invited = own?.invited.find((each) => each.login.name === login)
    if (!own || !invited || invited.revokedAt !== null) return await this.notOpened()
    const wrapped = await wrappedBy(invited.secret)
    const opened = await wrapped.fromDevice.open({ table: own.table, subject }, data)
    const message = opened.ok ? readMessage(shape, opened.text) : null
    if (!opened.ok || message === null) return await this.notOpened()
    return { own, invited, message, count: opened.count }
  }

  private async notOpened(): Promise<null> {
    await this.tally('foreign')
    return null
  }

  private async tally(what: 'foreign' | 'repeated'): Promise<void> {
    await this.services.store.counts
      .where('trialId')
      .equals(this.trialId)
      .modify((counts) => {
        counts[what] += 1
      })
  }

  private heardOf(login: string, seat: string): Promise<HeardSeat | undefined> {
    return this.services.store.heard.get(heardKey(this.trialId, login, seat))
  }

  private async keep(
    login: string,
    seat: string,
    change: (heard: HeardSeat) => HeardSeat,
  ): Promise<void> {
    const { store } = this.services
    await store.transaction('rw', store.heard, async () => {
      const before = await this.heardOf(login, seat)
      await store.heard.put(change(before ?? unheard(this.trialId, login, seat)))
    })
  }
}

const unheard = (trialId: string, login: string, seat: string): HeardSeat => ({
  ...{ key: heardKey(trialId, login, seat), trialId, login, seat },
  ...{ receipt: noReceipt satisfies Receipt, lastHeardAt: 0, written: 0, clockLater: null },
  refused: [],
})
