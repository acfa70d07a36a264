import { liveQuery } from 'dexie'
import { useEffect } from 'react'
import { tellFailedWork } from '@/app/kit/page/failed-work.ts'
import { markOpenTable } from '@/app/services/open-tables.ts'
import { type Services, useServices } from '@/app/services/services.ts'
import { planHolder } from '@/exchange/hand-plan.ts'
import { runJoinedTable } from '@/exchange/joined-table.ts'
import { runOwnTable } from '@/exchange/own-table.ts'
import type { Running, TableServices } from '@/exchange/services.ts'
import { tellLine } from './lines.ts'
import { tableServices } from './table-services.ts'

/** Works the tables of this device for as long as the page stands: in one window, where there are several. Shows nothing. */
export function TableRunner() {
  const services = useServices()
  useEffect(() => {
    const gone = new AbortController()
    const work = () => workTables(services, gone.signal)
    const alone = async () => {
      // A page that came by plain http has no locks; there a guest has one window open.
      if (!('locks' in navigator)) return await work()
      await navigator.locks.request('evenhand-tables', { signal: gone.signal }, work)
    }
    alone().catch((failure: unknown) => {
      if (!gone.signal.aborted) tellFailedWork(failure)
    })
    return () => gone.abort()
  }, [services])
  return null
}

/** Runs what is kept of tables and follows its changes, until the signal. */
async function workTables(services: Services, until: AbortSignal): Promise<void> {
  const given = tableServices(services)
  const { store } = given
  const running = new Map<string, Running>()
  const start = (key: string, run: Running) => {
    running.set(key, run)
    tellLine(key, run.line())
    run.subscribe(() => tellLine(key, run.line()))
  }
  const end = async (key: string) => {
    const run = running.get(key)
    running.delete(key)
    tellLine(key, null)
    await run?.stop()
  }
  let marked: Promise<void> = Promise.resolve()
  const followed = liveQuery(async () => ({
    own: await store.own.toArray(),
    joined: await store.joined.toArray(),
  })).subscribe(({ own, joined }) => {
    const wanted = new Set([
      ...own.map(({ trialId }) => trialId),
      ...joined.map(({ table, seat }) => `${table}/${seat}`),
    ])
    for (const key of running.keys()) if (!wanted.has(key)) void end(key)
    for (const table of own)
      if (!running.has(table.trialId)) start(table.trialId, runOwnTable(given, table))
    for (const table of joined) {
      const key = `${table.table}/${table.seat}`
      if (!running.has(key)) start(key, runJoinedTable(given, table))
    }
    marked = marked.then(() => keepMarks(given)).catch(given.onFailure)
  })
  await new Promise<void>((done) => until.addEventListener('abort', () => done(), { once: true }))
  followed.unsubscribe()
  await Promise.all([...running.keys()].map(end))
}

/** What every page is to know of the tables: which trials this device helps with, and where each plan is changed. */
async function keepMarks({ notebook, store }: TableServices): Promise<void> {
  for (const table of await store.own.toArray()) {
    const holder = planHolder(table)
    await markOpenTable(notebook, `own/${table.trialId}`, holder ? holder.login : '')
  }
  for (const { trialId, table, notice, seat } of await store.joined.toArray()) {
    if (trialId === null) continue
    await markOpenTable(notebook, `helps/${trialId}`, table)
    await markOpenTable(notebook, `plan/${trialId}`, notice?.planAt === seat ? table : null)
  }
}
