import type { Page } from 'playwright-core'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** The one trial of a page's notebook as its records lie on the disk, each list rising by id. */
export async function trialOnDisk(page: Page): Promise<WholeTrial> {
  const { trials, ...lists } = await page.evaluate(recordsOnDisk)
  const [trial] = trials ?? []
  if (!trial) throw new Error('no trial on the disk')
  return { trial, ...lists } as unknown as WholeTrial
}

/** Runs in the page: a store of IndexedDB gives its records in the order of their ids. */
async function recordsOnDisk(): Promise<Record<string, unknown[]>> {
  const answered = <Result>(request: IDBRequest<Result>) =>
    new Promise<Result>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
  const database = await answered(indexedDB.open('evenhand'))
  try {
    const names = ['trials', 'plans', 'sessions', 'events', 'ballots', 'photos', 'kitchen']
    const asked = database.transaction(names)
    const lists = names.map(async (name) => [
      name,
      await answered(asked.objectStore(name).getAll()),
    ])
    return Object.fromEntries(await Promise.all(lists))
  } finally {
    database.close()
  }
}
