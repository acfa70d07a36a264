import { jetstream, jetstreamManager } from '@nats-io/jetstream'
import { expect, test } from 'vitest'
import { findServer } from '@/hub/find-server.ts'
import { openStreams } from '@/table/table-streams.ts'
import { joinAs, runHub } from './running-hub.ts'

test.skipIf(!findServer())(
  'a hub killed twice keeps what it said to have, once, and takes a repeat for a repeat',
  async () => {
    const hub = await runHub()
    try {
      const [ticket] = hub.tickets
      await openStreams(await joinAs(ticket, 'owner', 'OWNER222'))
      for (const round of [0, 1]) {
        const owner = await joinAs(ticket, 'owner', 'OWNER222')
        for (let count = 1; count <= 20; count += 1)
          await jetstream(owner).publish('w.BN3D6RSU', `${count}`, { msgID: `${round}-${count}` })
        await hub.restart()
      }
      const again = await joinAs(ticket, 'owner', 'OWNER222')
      const repeat = await jetstream(again).publish('w.BN3D6RSU', '20', { msgID: '1-20' })
      expect(repeat.duplicate).toBe(true)
      const { state } = await (await jetstreamManager(again)).streams.info('W')
      expect(state.messages).toBe(40)
      await again.close()
    } finally {
      await hub.stop()
    }
  },
)
