import { describe, expect, test } from 'vitest'
import { seatOf } from '@/app/table/seats-of-table.ts'
import { clockWords, presenceWords } from '@/core/wording/table/table-text.ts'
import type { HeardSeat, Invited } from '@/exchange/table-store.ts'

const now = Date.UTC(2026, 4, 9, 14)
const invited = (name: string, change: Partial<Invited> = {}): Invited => ({
  ...{ part: 'taster', tasterId: 'ak', secret: null, madeAt: now, revokedAt: null },
  login: { name, claim: '', seed: '' },
  ...change,
})
const heard = (login: string, seat: string, minutesAgo: number, written = 0): HeardSeat => ({
  ...{ key: `t/${login}/${seat}`, trialId: 't', login, seat, written, clockLater: null },
  ...{ receipt: { to: 2, missing: [1] }, lastHeardAt: now - minutesAgo * 60_000, refused: [] },
})
const ak = { part: 'taster' as const, tasterId: 'ak' }
const wordsOf = (logins: Invited[], seats: HeardSeat[]) =>
  presenceWords(seatOf(ak, logins, seats, now).presence)

describe('who holds a part of a table', () => {
  test('says nobody, here, how long it is quiet, and what was taken back', () => {
    expect(wordsOf([], [])).toBe('nobody yet')
    expect(wordsOf([invited('A')], [])).toBe('nobody yet')
    expect(wordsOf([invited('A')], [heard('A', 's', 0)])).toBe('here now')
    expect(wordsOf([invited('A')], [heard('A', 's', 3)])).toBe('last heard 3 min ago')
    expect(wordsOf([invited('A', { revokedAt: now })], [heard('A', 's', 0)])).toBe('taken back')
  })

  test('the newest code that holds counts; what its device has written and is not in is still to come', () => {
    const logins = [invited('A', { revokedAt: now }), invited('B')]
    const seats = [heard('A', 's', 0, 9), heard('B', 't', 3, 4)]
    // Of B: entry 1 is missing, 3 and 4 were written since.
    expect(seatOf(ak, logins, seats, now)).toMatchObject({
      ...{ toCome: 3, devices: 0, presence: { state: 'quiet', minutes: 3 } },
      invited: { login: { name: 'B' } },
    })
  })

  test('two devices that use one code at a time are counted', () => {
    const seats = [heard('A', 's', 0), heard('A', 't', 0)]
    expect(seatOf(ak, [invited('A')], seats, now).devices).toBe(2)
  })

  test('a clock that stands otherwise is said, from a second on', () => {
    const clockOf = (ownerLater: number) =>
      seatOf(ak, [invited('A')], [{ ...heard('A', 's', 0), ownerLater }], now).clockLater
    expect(clockOf(999)).toBeNull()
    expect(clockWords(clockOf(90_000) ?? 0)).toContain('1 min 30 s behind this one')
    expect(clockWords(clockOf(-61_000) ?? 0)).toContain('1 min 1 s ahead of this one')
  })
})
