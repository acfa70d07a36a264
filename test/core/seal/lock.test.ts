import { describe, expect, it } from 'vitest'
import { beginsMix, locked, lockedSince } from '@/core/seal/lock.ts'
import { madePlan } from '../made-plan.ts'
import { madeLog } from '../session/made-events.ts'

const about = { kind: 'batch', id: 'b-1' } as const
const start = (stepId: string) => ({ kind: 'step-started', stepId, repeat: 1 }) as const
const weighed = { kind: 'weighed', ingredientId: 'flour', grams: 400 } as const
const plans = [madePlan()]

describe('the lock', () => {
  it('comes with the first mix, not with what comes before', () => {
    const { events, log } = madeLog()
    const records = { plans, events, ballots: [] }
    log(weighed, { about })
    expect(locked(records)).toBe(false)
    expect(beginsMix(start('rest'), plans)).toBe(false)
    expect(beginsMix(start('mix'), plans)).toBe(true)
    log({ kind: 'lock' }, { at: 7000 })
    log(start('mix'), { about })
    expect(locked(records)).toBe(true)
    expect(lockedSince(records)).toBe(7000)
  })

  it('stands with a weight when the mix is taken back, and with a mix that no lock was written for', () => {
    const { events, log } = madeLog()
    const records = { plans, events, ballots: [] }
    log(start('mix'), { about, at: 5000 })
    expect(lockedSince(records)).toBe(5000)
    log(weighed, { about })
    log({ kind: 'void', corrects: 'e-1' })
    expect(locked(records)).toBe(true)
    log({ kind: 'void', corrects: 'e-2' })
    expect(locked(records)).toBe(false)
    expect(lockedSince(records)).toBeNull()
  })

  it('stands while there is a ballot, whatever is taken back', () => {
    const { events, log } = madeLog()
    log(start('mix'), { about })
    log({ kind: 'void', corrects: 'e-1' })
    expect(locked({ plans, events, ballots: [] })).toBe(false)
    expect(locked({ plans, events, ballots: [{ sessionId: 'session-a' }] })).toBe(true)
  })
})
