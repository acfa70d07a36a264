import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freePort } from '@/hub/free-port.ts'
import { troubleText } from '@/hub/hub-trouble.ts'
import { connectionFrom } from '@/hub/own-connection.ts'
import { type HubAsked, type RunningHub, startHub } from '@/hub/start-hub.ts'
import { type HubCode, readHubCode } from '@/table/hub-code.ts'
import type { Connect } from '@/table/hub-desk.ts'

export interface StartedHub {
  hub: RunningHub
  asked: HubAsked
  code: HubCode
  /** Connects as the page beside the hub would. */
  connect: Connect
  /** Stops it and takes its folder away. */
  end: () => Promise<void>
}

/** Asks for a hub as `npm run hub` does, on a free port and in a folder of its own. */
export async function askedForTest(more: Partial<HubAsked> = {}): Promise<HubAsked> {
  return {
    folder: mkdtempSync(join(tmpdir(), 'evenhand-hub-')),
    port: await freePort(),
    ...{ lan: null, certificate: null, page: null, also: [], app: null, beside: null },
    mostTables: 2,
    ...more,
  }
}

/** A whole hub, desk and door included, as a kitchen has it. */
export async function startedHub(more: Partial<HubAsked> = {}): Promise<StartedHub> {
  const asked = await askedForTest(more)
  const started = await startHub(asked, {
    again: () => undefined,
    gone: (trouble) => {
      throw new Error(troubleText(trouble))
    },
    troubled: (failure) => console.error(failure),
  })
  if (!started.ok) throw new Error(troubleText(started.trouble))
  const { hub } = started
  const read = readHubCode(hub.here)
  if (!read.ok) throw new Error(read.reason)
  return {
    ...{ hub, asked, code: read.code },
    connect: (address, login) => connectionFrom(new URL(read.code.page).origin, address, login),
    end: async () => {
      await hub.stop()
      rmSync(asked.folder, { recursive: true, force: true })
    },
  }
}
