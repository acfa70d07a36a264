import { liveQuery } from 'dexie'
import { openStreams } from '@/table/table-streams.ts'
import { holdLine } from './held-line.ts'
import { laterThanHub } from './hub-clock.ts'
import { NoticeBoard } from './notice-board.ts'
import { readArriving } from './read-arriving.ts'
import type { Running, TableServices } from './services.ts'
import type { OwnTable } from './table-store.ts'
import { TakesIn } from './takes-in.ts'

/** Works the table of a trial on the device that opened it: takes in what comes, and tells each part what it may know. */
export function runOwnTable(
  services: TableServices,
  { trialId, ticket, owner }: OwnTable,
): Running {
  const { store, notebook } = services
  return holdLine(services, ticket.address, owner, async (line, ended) => {
    await openStreams(line, ticket.replicas)
    const board = new NoticeBoard(services, trialId, line)
    const later = await laterThanHub(line, owner.name, services.now)
    const takesIn = new TakesIn(services, trialId, (login) => board.due(login), later)
    const here = line.subscribe('h.*', {
      callback: (failure, message) => {
        if (!failure) void takesIn.here(message.subject, message.data)
      },
    })
    const changed = liveQuery(async () => {
      const [whole, own] = [await notebook.wholeTrial(trialId), await store.own.get(trialId)]
      return { whole, own }
    }).subscribe(({ whole, own }) => {
      if (whole && own) board.see(whole, own)
    })
    try {
      await readArriving(line, ended, (arrived) => takesIn.take(arrived))
    } finally {
      changed.unsubscribe()
      here.unsubscribe()
      await board.done()
    }
  })
}
