import type * as z from 'zod/mini'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { orderedEvents } from '@/core/session/ordered-events.ts'
import type { eventShape } from './version-1-log.ts'

/** An entry of version 1, on its way. */
export type FoldableEvent = z.infer<typeof eventShape>

interface Recast {
  kind?: 'bake-in' | 'bake-out'
  about?: FoldableEvent['about']
  corrects?: string
  stepId?: string
  repeat?: number
  pieceIds?: readonly string[]
}

/** The log of one session while entries that say the same are folded into one: none is changed, each is asked for afterwards. */
export class FoldedLog {
  private readonly citing = new Map<string, FoldableEvent[]>()
  private readonly place: ReadonlyMap<string, number>
  private readonly stand: ReadonlySet<string>
  private readonly dropped = new Set<string>()
  private readonly changes = new Map<string, Recast>()

  /** `all` are the entries of the whole trial: none of them may be left citing one that was dropped. */
  constructor(own: readonly FoldableEvent[], all: readonly FoldableEvent[]) {
    // How a log is read, what stands and in which order, has been the same in all versions.
    const log = own as readonly Event[]
    this.place = new Map(orderedEvents(log).map(({ id }, at) => [id, at]))
    this.stand = new Set(effectiveEvents(log).map(({ id }) => id))
    for (const event of all)
      if (event.corrects !== undefined)
        this.citing.set(event.corrects, [...(this.citing.get(event.corrects) ?? []), event])
  }

  /** Whether an entry corrects nothing and was only taken back or said again: nothing else was made of it. */
  isPlain(entry: FoldableEvent): boolean {
    const ofIt = ({ kind }: FoldableEvent) => kind === entry.kind || kind === 'void'
    return entry.corrects === undefined && this.chain(entry).every(ofIt)
  }

  /** What stands for an entry: itself or its correction; undefined where it was taken back. */
  standing(entry: FoldableEvent): FoldableEvent | undefined {
    return this.chain(entry).find(({ id }) => this.stand.has(id))
  }

  /** Says an entry, and each correction of it, in other words. */
  recast(entry: FoldableEvent, words: Recast): void {
    for (const one of this.chain(entry))
      if (one.kind !== 'void') this.changes.set(one.id, { ...this.changes.get(one.id), ...words })
  }

  /**
   * Drops an entry that says the same as one that is kept. Where a correction of it is the later word, its corrections become
   * those of the kept one (`carry`); else they go with it, as do the entries that took it back.
   */
  fold(entry: FoldableEvent, kept: FoldableEvent, carry = true): void {
    const [own, other] = [this.standing(entry), this.standing(kept)]
    const moves = carry && own && other && own.at !== other.at && this.isLater(own, other)
    const carried = new Set<string>()
    if (moves) {
      const words = { kind: kept.kind as Recast['kind'], ...this.changes.get(kept.id) }
      for (const one of this.chain(entry).slice(1)) {
        if (one.kind === 'void') continue
        this.changes.set(one.id, { ...words, about: kept.about, corrects: kept.id } as Recast)
        for (const { id } of this.chain(one)) carried.add(id)
      }
    }
    for (const { id } of this.chain(entry)) if (!carried.has(id)) this.dropped.add(id)
  }

  /** Names the step of an entry of the oven that names none. */
  nameStep(entry: FoldableEvent, stepId: string): void {
    if (entry.kind !== 'bake-in' && entry.kind !== 'bake-out') return
    this.changes.set(entry.id, { stepId, repeat: 1, ...this.changes.get(entry.id) })
  }

  /** What has become of an entry; undefined for one that was dropped. */
  after(entry: FoldableEvent): FoldableEvent | undefined {
    if (this.dropped.has(entry.id)) return undefined
    const change = this.changes.get(entry.id)
    return change ? ({ ...entry, ...change } as FoldableEvent) : entry
  }

  private isLater(one: FoldableEvent, other: FoldableEvent): boolean {
    return (this.place.get(one.id) ?? 0) > (this.place.get(other.id) ?? 0)
  }

  /** An entry, and all that cites it, through others too. */
  private chain(entry: FoldableEvent): FoldableEvent[] {
    const found = new Map([[entry.id, entry]])
    for (const { id } of found.values())
      for (const one of this.citing.get(id) ?? []) if (!found.has(one.id)) found.set(one.id, one)
    return [...found.values()]
  }
}
