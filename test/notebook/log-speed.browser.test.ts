import { expect, test } from 'vitest'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

/** What a tap at the bench may take to be on disk; a hundred milliseconds is felt as at once. */
const mostMilliseconds = 100

test('N12: an entry is on disk at once, also behind a log of 1 500 entries', async () => {
  const whole = wholeTrialOf()
  const reading = whole.events.find((event) => event.kind === 'temperature')
  if (!reading) throw new Error('the whole trial has a temperature')
  const more = Array.from({ length: 1500 }, (_, index) => ({
    ...reading,
    id: `more-${String(index).padStart(4, '0')}`,
    count: 5000 + index,
  }))
  let ids = 0
  const notebook = createNotebook(`log-speed-${performance.timeOrigin}`, {
    now: () => Date.UTC(2026, 4, 9, 12),
    zone: 'UTC',
    newId: () => `tap-${++ids}`,
    newSeed: () => 7,
  })
  const read = await notebook.importTrial(
    writeTrialFile({ ...whole, events: [...whole.events, ...more] }),
  )
  expect(read.ok).toBe(true)
  const { id, device, count, at, zone, ...entry } = reading
  const taken: number[] = []
  for (let tap = 0; tap < 9; tap += 1) {
    const pressed = performance.now()
    await notebook.log(entry)
    taken.push(performance.now() - pressed)
  }
  // The quickest of nine: a busy machine may delay any one of them, none of them makes it quicker.
  expect(Math.min(...taken)).toBeLessThan(mostMilliseconds)
  const stored = await notebook.wholeTrial(whole.trial.id)
  expect(stored?.events.length).toBe(whole.events.length + 1500 + 9)
  notebook.close()
})
