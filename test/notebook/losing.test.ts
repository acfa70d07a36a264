import 'fake-indexeddb/auto'
import { Dexie, RangeSet } from 'dexie'
import { forceCloseDatabase } from 'fake-indexeddb'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { bookPage, readySearch } from '@/notebook/book-page.ts'
import { presentSteps } from '@/notebook/create-notebook.ts'
import { Store } from '@/notebook/store.ts'
import { allLines } from '@/notebook/stored-summaries.ts'
import { contentOf, freshName, notebookOf, notebookWithTrial, testNow } from './notebook-of.ts'

const photo = {
  ...{ id: 'photo-2', trialId: 'trial-1', at: testNow, mediaType: 'image/jpeg' as const },
  ...{ widthPixels: 4, heightPixels: 3 },
}
const line = {
  ...{ trialId: 'trial-1', sessionId: 'session-1', kind: 'photo' as const, photoId: 'photo-2' },
  about: { kind: 'batch' as const, id: 'batch-1' },
}
const picture = new Blob([new Uint8Array([255, 216, 7])], { type: 'image/jpeg' })

/** What Dexie does to every open database as its page goes to rest in the browser's back/forward cache (its source, 4.4.7). */
function rest(name: string): Dexie[] {
  const { connections } = Dexie as unknown as { connections: Dexie[] }
  const resting = connections.filter((each) => each.name === name)
  for (const each of resting) each.close({ disableAutoOpen: false })
  return resting
}

afterEach(() => void vi.restoreAllMocks())

describe('losing nothing silently', () => {
  test('N47: a photo is kept with its line of the log', async () => {
    const notebook = await notebookWithTrial()
    await notebook.addPhoto(photo, picture, line)
    const whole = await notebook.wholeTrial('trial-1')
    expect(whole?.photos).toContainEqual(photo)
    expect(whole?.events.at(-1)).toMatchObject({ kind: 'photo', photoId: 'photo-2' })
  })

  test.each(['photos', 'pictures', 'events'])(
    'N47: a photo for whose %s there is no room leaves nothing behind',
    async (table) => {
      const notebook = await notebookWithTrial()
      const before = await contentOf(notebook)
      for (const method of ['put', 'add'] as const) {
        const real = IDBObjectStore.prototype[method]
        vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function full(
          this: IDBObjectStore,
          ...given
        ) {
          if (this.name === table) throw new DOMException('full', 'QuotaExceededError')
          return real.apply(this, given)
        })
      }
      await expect(notebook.addPhoto(photo, picture, line)).rejects.toMatchObject({
        reason: 'out-of-room',
      })
      vi.restoreAllMocks()
      expect(await contentOf(notebook)).toEqual(before)
      expect(await notebook.picture('photo-2')).toBeUndefined()
    },
  )

  test('N49: a notebook that is deleted while it is open says so, and is not made anew', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const heard = vi.fn<() => void>()
    notebook.lost.subscribe(heard)
    expect(notebook.lost.reason()).toBeNull()
    await new Promise((resolve, reject) => {
      const request = indexedDB.deleteDatabase(name)
      request.onsuccess = resolve
      request.onerror = reject
    })
    expect(heard).toHaveBeenCalledTimes(1)
    expect(notebook.lost.reason()).toBe('cleared')
    await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'cleared' })
    expect((await indexedDB.databases()).map((each) => each.name)).not.toContain(name)
  })

  test('N49: a page that rested in the back/forward cache finds its notebook, with what others wrote meanwhile', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const other = notebookOf(name)
    await other.settings()
    const heard = vi.fn<() => void>()
    notebook.lost.subscribe(heard)
    const [before] = await notebook.chains().then(() => notebook.summaries())
    expect(rest(name)).toHaveLength(2)
    await new Promise((resolve) => setTimeout(resolve))
    expect(heard).not.toHaveBeenCalled()
    await other.archive('trial-1', true)
    const [now] = await notebook.summaries({ archived: true })
    expect(before?.archived).toBe(false)
    expect(now?.archived).toBe(true)
    await notebook.keepSettings({ appearance: 'dark' })
    expect(notebook.lost.reason()).toBeNull()
    other.close()
  })

  test('N49: one that was cleared while its page rested says so, and is not made anew', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const heard = vi.fn<() => void>()
    notebook.lost.subscribe(heard)
    rest(name)
    await Dexie.delete(name)
    await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'cleared' })
    expect(heard).toHaveBeenCalledTimes(1)
    expect((await indexedDB.databases()).map((each) => each.name)).not.toContain(name)
  })

  test('N49: a connection that the browser closes is lost, after a rest too', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    const [resting] = rest(name)
    await notebook.summaries()
    forceCloseDatabase(resting?.backendDB() as unknown as Parameters<typeof forceCloseDatabase>[0])
    await Promise.resolve()
    expect(notebook.lost.reason()).toBe('cleared')
    await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'cleared' })
  })

  test('lines that were held are read anew once a page comes back from its rest', async () => {
    const store = new Store(freshName(), presentSteps)
    await store.open()
    await allLines(store)
    expect(store.heldLines).toEqual([])
    // What Dexie tells at a page's return: anything may have changed.
    Dexie.on.storagemutated.fire({ all: new RangeSet(Number.NEGATIVE_INFINITY, [[]]) })
    expect(store.heldLines).toBeUndefined()
    store.leave()
  })

  test('whoever reads the lines at the same time holds the same ones, and a search that was made ready reads none anew', async () => {
    const name = freshName()
    const notebook = await notebookWithTrial(name)
    notebook.close()
    const store = new Store(name, presentSteps)
    await store.open()
    const [one, other] = await Promise.all([allLines(store), allLines(store)])
    expect(one).toHaveLength(1)
    expect(other).toBe(one)
    store.heldLines = undefined
    await readySearch(store)
    const held = store.heldLines
    expect(held).toEqual(one)
    await bookPage(store, { shelf: 'book', search: 'flour', most: 20 })
    expect(store.heldLines).toBe(held)
    store.leave()
  })

  test('N49: one that is closed as asked is not lost', async () => {
    const notebook = notebookOf()
    await notebook.settings()
    const heard = vi.fn<() => void>()
    notebook.lost.subscribe(heard)
    notebook.close()
    await new Promise((resolve) => setTimeout(resolve))
    expect(heard).not.toHaveBeenCalled()
    await expect(notebook.summaries()).rejects.toMatchObject({ reason: 'closed' })
  })
})
