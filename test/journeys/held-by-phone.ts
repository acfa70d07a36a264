import type { Page } from 'playwright-core'

/** All a phone holds of what it was given: page, address, title, history, and what the browser keeps. */
export async function heldByPhone(page: Page): Promise<string> {
  const kept = await page.evaluate(keptByBrowser)
  const cdp = await page.context().newCDPSession(page)
  const { entries } = await cdp.send('Page.getNavigationHistory')
  return [
    await page.content(),
    page.url(),
    await page.title(),
    ...entries.map(({ url, title }) => `${url} ${title}`),
    kept,
  ].join('\n')
}

/** Runs in the page: every record of every database, both storages, and every answer in its caches. */
async function keptByBrowser(): Promise<string> {
  const answered = <Result>(request: IDBRequest<Result>) =>
    new Promise<Result>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
  const all: unknown[] = [{ ...localStorage }, { ...sessionStorage }, document.cookie]
  for (const { name = '' } of await indexedDB.databases()) {
    const database = await answered(indexedDB.open(name))
    for (const store of database.objectStoreNames)
      all.push(await answered(database.transaction(store).objectStore(store).getAll()))
    database.close()
  }
  // A page of plain http has none.
  for (const name of (await globalThis.caches?.keys()) ?? []) {
    const cache = await caches.open(name)
    for (const asked of await cache.keys())
      all.push(asked.url, await (await cache.match(asked))?.text())
  }
  return JSON.stringify(all)
}
