import type { Page } from 'playwright-core'

/** Has the page count every record that comes out of its database, from before its first script on. */
export async function countRecordsRead(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const counted = { records: 0 }
    Object.assign(window, { recordsRead: counted })
    const count = (result: unknown) => {
      if (Array.isArray(result)) for (const each of result) count(each)
      else if (typeof result === 'object' && result !== null) counted.records += 1
    }
    for (const kind of [IDBObjectStore, IDBIndex])
      for (const name of ['get', 'getAll'] as const) {
        const plain = kind.prototype[name] as (...given: unknown[]) => IDBRequest
        Object.assign(kind.prototype, {
          [name](this: unknown, ...given: unknown[]) {
            const request = plain.apply(this, given)
            request.addEventListener('success', () => count(request.result))
            return request
          },
        })
      }
  })
}

/** The records read since the last asking. */
export function recordsRead(page: Page): Promise<number> {
  return page.evaluate(() => {
    const counted = Reflect.get(window, 'recordsRead') as { records: number }
    const { records } = counted
    counted.records = 0
    return records
  })
}
