import type { Page } from 'playwright-core'

/** What the browser lets the site keep at first: little enough to be filled at once, enough for some trials and photos. */
const narrowBytes = 5_000_000
/** Less than anybody's notebook takes already. */
const noBytes = 1_000

async function letKeep(page: Page, quotaSize: number): Promise<void> {
  const devtools = await page.context().newCDPSession(page)
  const { origin } = new URL(page.url())
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize })
}

/** Opens the notebook page in a browser whose own quota for this address is small. */
export async function openNarrow(page: Page, baseUrl: string): Promise<void> {
  // An address of the site that is not the program: the quota must be there before the first write.
  await page.goto(`${baseUrl}manifest.webmanifest`)
  await letKeep(page, narrowBytes)
  await page.goto(baseUrl)
}

/**
 * Fills what room is left with a database that is none of the program's, in ever smaller pieces, until the browser has not
 * fifty bytes left by its own count, which it renews only then; after that it allows less than is there. Nothing is made
 * believe: every write after this is refused by the browser itself.
 */
export async function fillRoom(page: Page): Promise<void> {
  await fillToTheBrim(page)
  await letKeep(page, noBytes)
}

function fillToTheBrim(page: Page): Promise<void> {
  return page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const open = indexedDB.open('something-else', 1)
      open.onupgradeneeded = () => open.result.createObjectStore('bytes', { autoIncrement: true })
      open.onsuccess = () => resolve(open.result)
      open.onerror = () => reject(open.error)
    })
    const fits = (length: number) =>
      new Promise<boolean>((resolve) => {
        const bytes = new Uint8Array(length)
        for (let from = 0; from < length; from += 65_536)
          crypto.getRandomValues(bytes.subarray(from, from + 65_536))
        const change = database.transaction('bytes', 'readwrite')
        change.objectStore('bytes').put(bytes)
        change.oncomplete = () => resolve(true)
        change.onabort = () => resolve(false)
      })
    for (const length of [500_000, 50_000, 5_000, 500, 50]) {
      let left = 1_000
      while (left > 0 && (await fits(length))) left -= 1
      if (left === 0) throw new Error('the room has no end')
    }
    database.close()
  })
}

/** There is room again. */
export const makeRoom = (page: Page) => letKeep(page, 50 * narrowBytes)

/** How many records each table of the notebook holds, read past the program. */
export function recordCounts(page: Page): Promise<Record<string, number>> {
  return page.evaluate(async () => {
    const answered = <Result>(request: IDBRequest<Result>) =>
      new Promise<Result>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
    const database = await answered(indexedDB.open('evenhand'))
    const counts: Record<string, number> = {}
    for (const name of database.objectStoreNames)
      counts[name] = await answered(database.transaction(name).objectStore(name).count())
    database.close()
    return counts
  })
}
