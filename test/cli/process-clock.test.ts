import { afterAll, expect, test } from 'vitest'
import { processClock } from '@/cli/process-clock.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'

const { TZ: before } = process.env
afterAll(() => {
  if (before === undefined) delete process.env.TZ
  else process.env.TZ = before
})

const zones = [
  'UTC',
  'Europe/Vienna',
  'America/St_Johns',
  'Asia/Kathmandu',
  'Australia/Lord_Howe',
  'Pacific/Kiritimati',
  'Somewhere/Else',
]

test('the process’s clock and the language service show the same', () => {
  // Every 11 hours and 7 minutes of two years: all hours of the day, and both changes of summer time.
  for (let at = Date.UTC(2026, 0, 1); at < Date.UTC(2028, 0, 1); at += 667 * 60_000)
    for (const zone of zones) expect(processClock(at, zone), zone).toEqual(civilTime(at, zone))
})
