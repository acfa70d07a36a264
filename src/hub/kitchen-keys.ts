import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createAccount, createOperator, type KeyPair } from '@nats-io/nkeys'
import * as z from 'zod/mini'
import { keyOfSeed, seedOf } from '@/table/claims.ts'
import { wordsOf } from './hub-trouble.ts'

/** The keys a hub keeps for as long as its folder lasts, as seeds. Whoever reads them can do anything at this hub. */
const keptShape = z.strictObject({
  version: z.literal(1),
  /** What its message server calls itself, so that one hub can be told from another on the same machine. */
  server: z.string().check(z.regex(/^hub-[a-z0-9]{8}$/)),
  operator: z.string(),
  system: z.string(),
  /** The account in which it is asked for tables, and the key that lets in there. */
  desk: z.string(),
  asker: z.string(),
})

export interface KitchenKeys {
  server: string
  operator: KeyPair
  system: KeyPair
  desk: KeyPair
  asker: KeyPair
}

export type KeysRead =
  | { ok: true; keys: KitchenKeys }
  | { ok: false; reason: 'cannot-write' | 'not-keys'; path: string; why: string }

/** The keys of the hub in a folder; made there, for its owner's eyes alone, where it has none yet. */
export function kitchenKeys(folder: string): KeysRead {
  const path = join(folder, 'keys.json')
  try {
    mkdirSync(join(folder, 'accounts'), { recursive: true, mode: 0o700 })
    chmodSync(folder, 0o700)
    if (!existsSync(path)) {
      // Written aside and renamed: a hub that is stopped meanwhile leaves no half of them.
      writeFileSync(`${path}.new`, `${JSON.stringify(newKeys(), null, 2)}\n`, { mode: 0o600 })
      renameSync(`${path}.new`, path)
    }
  } catch (failure) {
    return { ok: false, reason: 'cannot-write', path: folder, why: wordsOf(failure) }
  }
  try {
    const kept = keptShape.parse(JSON.parse(readFileSync(path, 'utf8')))
    const keys = {
      operator: keyOfSeed(kept.operator),
      system: keyOfSeed(kept.system),
      desk: keyOfSeed(kept.desk),
      asker: keyOfSeed(kept.asker),
    }
    return { ok: true, keys: { server: kept.server, ...keys } }
  } catch (failure) {
    return { ok: false, reason: 'not-keys', path, why: wordsOf(failure) }
  }
}

function newKeys(): z.infer<typeof keptShape> {
  const chance = crypto.getRandomValues(new Uint8Array(8))
  const signs = Array.from(chance, (byte) => (byte % 36).toString(36)).join('')
  return {
    version: 1,
    server: `hub-${signs}`,
    operator: seedOf(createOperator()),
    system: seedOf(createAccount()),
    desk: seedOf(createAccount()),
    asker: seedOf(createAccount()),
  }
}
