import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'
import { freshName, notebookOf, notebookWithTrial } from './notebook-of.ts'

const dough = { trialId: 'trial-1', sessionId: 'session-1', batchId: 'batch-1' }
const freshDay = () => ({ ...wholeTrialOf(), events: [], ballots: [], photos: [] })

test('N11: a dough made again changes its session, says so in the log, and reads back from a file; what was read before sees it', async () => {
  const name = freshName()
  const notebook = await notebookWithTrial(name, freshDay())
  const held = await notebook.wholeTrial('trial-1')
  const other = notebookOf(name)
  const heldThere = await other.wholeTrial('trial-1')
  const batchId = await notebook.makeAgain(dough)
  const now = await notebook.wholeTrial('trial-1', held)
  expect(now?.sessions[0]?.batches.map(({ id }) => id)).toContain(batchId)
  expect(now?.sessions[0]?.dealt.doughOrder.at(-1)).toBe(batchId)
  expect(now?.events).toMatchObject([{ kind: 'made-again', about: { id: 'batch-1' }, batchId }])
  // Another tab, which holds the session as it was.
  const there = await other.wholeTrial('trial-1', heldThere)
  expect(there?.sessions).toEqual(now?.sessions)
  const elsewhere = notebookOf()
  expect(await elsewhere.importTrial((await notebook.exportTrial('trial-1')).text)).toMatchObject({
    ok: true,
  })
  expect((await elsewhere.wholeTrial('trial-1'))?.sessions).toEqual(now?.sessions)
})

test('N11: it is refused where people have tasted, and the notebook stays as it was', async () => {
  const notebook = await notebookWithTrial()
  const before = writeTrialFile((await notebook.wholeTrial('trial-1')) ?? wholeTrialOf())
  await expect(notebook.makeAgain(dough)).rejects.toMatchObject({ reason: 'refused-record' })
  expect(writeTrialFile((await notebook.wholeTrial('trial-1')) ?? wholeTrialOf())).toBe(before)
})

test('N11: that it failed and that it is made again are kept together or not at all', async () => {
  const notebook = await notebookWithTrial(freshName(), freshDay())
  const batchId = await notebook.makeAgain({ ...dough, failed: { note: 'fell to the floor' } })
  const about = { kind: 'batch', id: 'batch-1' }
  const told = [
    { kind: 'failure', what: 'not-served', note: 'fell to the floor', about },
    { kind: 'made-again', batchId, about },
  ]
  expect((await notebook.wholeTrial('trial-1'))?.events).toMatchObject(told)
  // A second time it is refused, and nothing is said a second time.
  await expect(notebook.makeAgain({ ...dough, failed: {} })).rejects.toMatchObject({
    reason: 'refused-record',
  })
  expect((await notebook.wholeTrial('trial-1'))?.events).toMatchObject(told)
})
