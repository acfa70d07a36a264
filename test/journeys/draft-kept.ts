import type { Page } from 'playwright-core'

/** Waits until an unfinished text is in the drafts that the notebook of the page keeps on the disk. */
export async function draftKept(page: Page, text: string): Promise<void> {
  await page.waitForFunction(async (typed) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('evenhand')
      opening.onsuccess = () => resolve(opening.result)
      opening.onerror = () => reject(opening.error)
    })
    try {
      const drafts = await new Promise<{ values: Record<string, string> }[]>((resolve, reject) => {
        const reading = database.transaction('drafts').objectStore('drafts').getAll()
        reading.onsuccess = () => resolve(reading.result)
        reading.onerror = () => reject(reading.error)
      })
      return drafts.some(({ values }) => Object.values(values).includes(typed))
    } finally {
      database.close()
    }
  }, text)
}
