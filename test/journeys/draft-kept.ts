import type { Page } from 'playwright-core'
import { expect } from 'vitest'

/** Waits until an unfinished text is in the drafts that the notebook of the page keeps on the disk. */
export async function draftKept(page: Page, text: string): Promise<void> {
  await expect.poll(() => page.evaluate(draftsOnDisk)).toContain(text)
}

/** Every text of every draft; runs in the page. */
async function draftsOnDisk(): Promise<string[]> {
  const answered = <Result>(request: IDBRequest<Result>) =>
    new Promise<Result>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
  const database = await answered(indexedDB.open('evenhand'))
  try {
    const drafts: { values: Record<string, string> }[] = await answered(
      database.transaction('drafts').objectStore('drafts').getAll(),
    )
    return drafts.flatMap(({ values }) => Object.values(values))
  } finally {
    database.close()
  }
}
