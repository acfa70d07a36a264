import { expect, test } from 'vitest'
import { createNotebook } from '@/notebook/create-notebook.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

test('N12: an entry is stored behind a log of 1,500 entries as behind a short one', async () => {
  const whole = wholeTrialOf()
  const reading = whole.events.find((event) => event.kind === 'temperature')
  if (!reading) throw new Error('the whole trial has a temperature')
  const more = Array.from({ length: 1500 }, (_, index) => ({
    ...reading,
    id: `more-${String(index).padStart(4, '0')}`,
    count: 5000 + index,
  }))
  let ids = 0
  const notebook = createNotebook(`long-log-${performance.timeOrigin}`, {
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
  for (let tap = 0; tap < 9; tap += 1) await notebook.log(entry)
  const stored = await notebook.wholeTrial(whole.trial.id)
  expect(stored?.events.length).toBe(whole.events.length + 1500 + 9)
  notebook.close()
})
