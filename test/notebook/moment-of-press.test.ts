import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { presentSteps } from '@/notebook/create-notebook.ts'
import { Store } from '@/notebook/store.ts'
import { freshName, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

const note: NewEvent = {
  ...{ trialId: 'trial-1', sessionId: 'session-1' },
  kind: 'note',
  text: 'smells of apples',
  about: { kind: 'batch', id: 'batch-1' },
}

test('N15: the time is that of the press, though the disk keeps it waiting', async () => {
  const name = freshName()
  await notebookWithTrial(name)
  let time = testNow
  const notebook = notebookOf(name, () => time)
  const other = new Store(name, presentSteps)
  // Another tab, at some long work of its own.
  const work = other.transaction('rw', other.tables, async () => {
    for (let turn = 0; turn < 50; turn += 1) await other.trials.get('trial-1')
  })
  const logged = notebook.log(note)
  time += 90_000
  await work
  expect(await logged).toMatchObject({ at: testNow })
  other.close()
})
