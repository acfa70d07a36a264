import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { vi } from 'vitest'
import { main } from '@/cli/main.ts'
import { verbs } from '@/cli/verbs.ts'

// Loaded ahead, so that no test pays for it.
await Promise.all(Object.values(verbs).map((load) => load()))

/** What a command printed, and its exit code. */
export interface Answered {
  code: number
  out: string
  err: string
}

/** Runs a command in this process, as the terminal would. */
export async function runCommand(...words: string[]): Promise<Answered> {
  vi.stubGlobal('__APP_VERSION__', '0.0.0')
  const printed = { out: '', err: '' }
  const catching = (stream: 'stdout' | 'stderr', as: 'out' | 'err') =>
    vi.spyOn(process[stream], 'write').mockImplementation((text) => {
      printed[as] += String(text)
      return true
    })
  const spies = [catching('stdout', 'out'), catching('stderr', 'err')]
  try {
    return { code: await main(words), ...printed }
  } finally {
    for (const spy of spies) spy.mockRestore()
  }
}

const folder = mkdtempSync(join(tmpdir(), 'evenhand-'))

/** A path in a folder of this run alone, with the text written there when there is one. */
export function scratch(name: string, text?: string | Uint8Array): string {
  const path = join(folder, name)
  if (text !== undefined) writeFileSync(path, text)
  return path
}
