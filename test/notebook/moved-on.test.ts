import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import type { NewEvent } from '@/core/session/press/new-event.ts'
import { contentOf, freshName, notebookOf, notebookWithTrial } from './notebook-of.ts'

const start: NewEvent = {
  ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'step-started' },
  ...{ stepId: 'step-mix', repeat: 7, about: { kind: 'batch', id: 'batch-1' } },
}
const weight: NewEvent = {
  ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'weighed', grams: 12 },
  ...{ ingredientId: 'salt', about: { kind: 'batch', id: 'batch-2' } },
}

test('N61: of two presses at once in two tabs one is kept, and the other told what stands against it', async () => {
  const name = freshName()
  const here = await notebookWithTrial(name)
  const there = notebookOf(name)
  const seen = new Set((await there.wholeTrial('trial-1'))?.events.map(({ id }) => id))
  for (const press of [start, weight]) {
    const said = await Promise.allSettled([here.logAll([press], seen), there.logAll([press], seen)])
    expect(said.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected'])
    const refused = said.find((each) => each.status === 'rejected')
    expect(refused?.reason).toMatchObject({
      reason: 'moved-on',
      movedOn: { by: { kind: press.kind } },
    })
  }
})

test('N61: a press of several entries of which one is contradicted leaves the notebook as it was', async () => {
  const notebook = await notebookWithTrial()
  await notebook.log(start)
  const before = await contentOf(notebook)
  const note: NewEvent = {
    ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'note', text: 'smells of apples' },
    about: start.about,
  }
  await expect(notebook.logAll([note, start])).rejects.toMatchObject({ reason: 'moved-on' })
  expect(await contentOf(notebook)).toEqual(before)
})
