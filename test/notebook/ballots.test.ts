import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import type { NewBallot } from '@/notebook/notebook.ts'
import { notebookAtTheTable, testNow } from './notebook-of.ts'

const ballot: NewBallot = {
  trialId: 'trial-1',
  sessionId: 'session-1',
  tasterId: 'taster-2',
  startedAt: testNow - 60_000,
  about: { kind: 'serving', id: 'serving-1' },
  answers: [{ responseId: 'liking', value: 8 }],
}

test('N16: a second ballot about the same serving must replace the standing one', async () => {
  const notebook = await notebookAtTheTable()
  const first = await notebook.sealBallot(ballot)
  const refused = { reason: 'refused-record' }
  await expect(notebook.sealBallot(ballot)).rejects.toMatchObject(refused)
  const second = await notebook.sealBallot({ ...ballot, replaces: first.id })
  const replacing = { ...ballot, replaces: first.id }
  await expect(notebook.sealBallot(replacing)).rejects.toMatchObject(refused)
  await notebook.sealBallot({ ...ballot, replaces: second.id })
  const elsewhere = { ...ballot, about: { kind: 'serving' as const, id: 'serving-2' } }
  await expect(notebook.sealBallot({ ...elsewhere, replaces: second.id })).rejects.toMatchObject(
    refused,
  )
  await notebook.sealBallot(elsewhere)
  expect((await notebook.wholeTrial('trial-1'))?.ballots).toHaveLength(4 + 4)
})

test('a ballot from a phone of one’s own is kept whatever number of 32 bits its phone drew', async () => {
  const notebook = await notebookAtTheTable()
  const cameBy = { way: 'slip', nonce: 0xffffffff, revision: 255 } as const
  await notebook.sealBallot({ ...ballot, cameBy })
  const kept = (await notebook.wholeTrial('trial-1'))?.ballots.at(-1)
  expect(kept?.cameBy).toEqual(cameBy)
})
