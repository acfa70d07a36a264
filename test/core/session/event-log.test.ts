import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { effectiveEvents } from '@/core/session/effective-events.ts'
import type { Event } from '@/core/session/event-record.ts'
import { orderedEvents } from '@/core/session/ordered-events.ts'
import { undoTarget } from '@/core/session/undo-target.ts'
import { weightsOfBatch } from '@/core/session/weights-of-batch.ts'
import { madeLog } from './made-events.ts'

const about = { kind: 'batch', id: 'b-1' } as const
const weighed = (grams: number, corrects?: string) =>
  ({ kind: 'weighed', ingredientId: 'flour', grams, ...(corrects ? { corrects } : {}) }) as const
const standing = (events: Event[]) => effectiveEvents(events).map((event) => event.id)

describe('orderedEvents', () => {
  it('goes by count on one device even when its clock was set back, by stamp across devices', () => {
    const { events, log } = madeLog()
    log({ kind: 'note', text: 'one' }, { at: 5000, id: 'a1' })
    log({ kind: 'note', text: 'two' }, { at: 1000, id: 'a2' })
    log({ kind: 'note', text: 'other' }, { at: 3000, id: 'b1', device: 'device-b' })
    log({ kind: 'note', text: 'late' }, { at: 6000, id: 'b2', device: 'device-b' })
    expect(orderedEvents(events).map((event) => event.id)).toEqual(['b1', 'a1', 'a2', 'b2'])
  })
})

describe('effectiveEvents', () => {
  it('takes back, and takes the taking back back', () => {
    const { events, log } = madeLog()
    log(weighed(400), { about })
    log({ kind: 'void', corrects: 'e-1' })
    expect(standing(events)).toEqual([])
    log({ kind: 'void', corrects: 'e-2' })
    expect(standing(events)).toEqual(['e-1'])
    log({ kind: 'void', corrects: 'e-3' })
    expect(standing(events)).toEqual([])
  })

  it('lets a correction stand for what it corrects, and the corrected again when it is taken back', () => {
    const { events, log } = madeLog()
    log(weighed(400), { about })
    log(weighed(410, 'e-1'), { about })
    log(weighed(405, 'e-2'), { about })
    expect(standing(events)).toEqual(['e-3'])
    log({ kind: 'void', corrects: 'e-3' })
    expect(standing(events)).toEqual(['e-2'])
    log({ kind: 'void', corrects: 'e-2' })
    expect(standing(events)).toEqual(['e-1'])
  })

  it('lets the later of two corrections of one event stand alone', () => {
    const { events, log } = madeLog()
    log(weighed(400), { about })
    log(weighed(410, 'e-1'), { about, device: 'device-b' })
    log(weighed(420, 'e-1'), { about })
    expect(standing(events)).toEqual(['e-3'])
    expect(weightsOfBatch(effectiveEvents(events), 'b-1')).toEqual([
      { ingredientId: 'flour', prefermentId: null, grams: 420, readings: 1 },
    ])
    log({ kind: 'void', corrects: 'e-3' })
    expect(standing(events)).toEqual(['e-2'])
  })

  it('never lets two statements of one thing stand, wherever a chain is taken back or outdone', () => {
    const { events, log } = madeLog()
    log(weighed(400), { about })
    log(weighed(410, 'e-1'), { about })
    log(weighed(405, 'e-2'), { about })
    log({ kind: 'void', corrects: 'e-2' })
    expect(standing(events)).toEqual(['e-3'])
    log(weighed(420, 'e-1'), { about })
    expect(standing(events)).toEqual(['e-5'])
  })

  it('survives citations in a ring', () => {
    const { events, log } = madeLog()
    log(weighed(1, 'e-2'), { about })
    log(weighed(2, 'e-1'), { about })
    log(weighed(3, 'e-3'), { about })
    expect(standing(events)).toEqual(['e-1', 'e-2', 'e-3'])
  })

  const anyLog = fc
    .array(
      fc.record({
        device: fc.constantFrom('device-a', 'device-b', 'device-c'),
        at: fc.integer({ min: 0, max: 40 }),
        does: fc.constantFrom('weigh', 'void', 'correct'),
        cites: fc.nat(),
      }),
      { minLength: 1, maxLength: 25 },
    )
    .map((entries) => {
      const { events, log } = madeLog()
      for (const { device, at, does, cites } of entries) {
        const target = events[cites % Math.max(1, events.length)]
        if (does === 'weigh' || !target) log(weighed(events.length), { device, at, about })
        else if (does === 'void') log({ kind: 'void', corrects: target.id }, { device, at, about })
        else log(weighed(events.length, target.id), { device, at, about })
      }
      return events
    })

  it('does not depend on the order of arrival, nor on arriving twice', () => {
    fc.assert(
      fc.property(anyLog, fc.infiniteStream(fc.nat()), (events, keys) => {
        const arrived = events
          .map((event) => ({ event, key: keys.next().value ?? 0 }))
          .toSorted((one, other) => one.key - other.key)
          .map(({ event }) => event)
        expect(orderedEvents(arrived)).toEqual(orderedEvents(events))
        expect(standing([...arrived, ...events])).toEqual(standing(events))
      }),
    )
  })

  it('keeps every device in its own count order', () => {
    fc.assert(
      fc.property(anyLog, (events) => {
        const last = new Map<string, number>()
        for (const { device, count } of orderedEvents(events)) {
          expect(count).toBeGreaterThan(last.get(device) ?? 0)
          last.set(device, count)
        }
      }),
    )
  })

  it('returns to what stood before when the last undo is undone', () => {
    fc.assert(
      fc.property(anyLog, (events) => {
        const target = undoTarget(events, 'device-a')
        if (!target) return
        const count = 1000
        const undo = (id: string, cited: string, at: number): Event =>
          ({
            ...target,
            ...{ id, device: 'device-a', count: at, at: 1000 + at, kind: 'void', corrects: cited },
          }) as Event
        const once = [...events, undo('u-1', target.id, count)]
        const twice = [...once, undo('u-2', 'u-1', count + 1)]
        expect(standing(once)).not.toContain(target.id)
        expect(standing(twice)).toEqual(standing(events))
      }),
    )
  })
})

describe('undoTarget', () => {
  it('walks back through one device and passes over locks and looks', () => {
    const { events, log } = madeLog()
    log(weighed(400), { about })
    log({ kind: 'lock' })
    log(weighed(2), { about, device: 'device-b' })
    log({ kind: 'peeked' })
    expect(undoTarget(events, 'device-a')?.id).toBe('e-1')
    expect(undoTarget(events, 'device-b')?.id).toBe('e-3')
    log({ kind: 'void', corrects: 'e-1' })
    expect(undoTarget(events, 'device-a')).toBeNull()
    expect(undoTarget(events, 'device-b', 'elsewhere')).toBeNull()
  })

  it('takes back no taster’s coming and going along with the work at the bench', () => {
    const { events, log } = madeLog()
    log(weighed(400), { about })
    log({ kind: 'left' }, { about: { kind: 'taster', id: 'ta-1' } })
    expect(undoTarget(events, 'device-a')?.id).toBe('e-1')
  })
})
