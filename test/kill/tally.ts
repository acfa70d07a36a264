import type { Page } from 'playwright-core'

/** How many records of each kind the notebook of a page holds on the disk, and every question of its plans. */
export interface Tally {
  counts: Record<string, number>
  questions: string[]
}

/** Reads the tally past the program, straight from the browser's database. */
export function tallyOnDisk(page: Page): Promise<Tally> {
  return page.evaluate(async () => {
    const answered = <Result>(request: IDBRequest<Result>) =>
      new Promise<Result>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
    const database = await answered(indexedDB.open('evenhand'))
    try {
      const all = <Row>(table: string): Promise<Row[]> =>
        answered(database.transaction(table).objectStore(table).getAll())
      const events = await all<{ kind: string }>('events')
      const plans = await all<{ question: string }>('plans')
      const counts: Record<string, number> = {}
      const count = (name: string, number = 1) => {
        counts[name] = (counts[name] ?? 0) + number
      }
      for (const { kind } of events) count(kind)
      for (const table of ['trials', 'ballots', 'photos', 'pictures'])
        count(table, (await all(table)).length)
      return { counts, questions: plans.map(({ question }) => question) }
    } finally {
      database.close()
    }
  })
}
