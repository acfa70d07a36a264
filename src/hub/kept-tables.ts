import { existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import * as z from 'zod/mini'
import { type ClaimRead, readClaim } from './read-claim.ts'

/** A table that a hub still holds, as its folder tells while the hub is stopped. */
export interface KeptTable {
  /** The first eight signs of its owner's account. */
  name: string
  accounts: readonly string[]
  /** When it was opened, or a login of it last revoked; seconds since 1970. */
  signedAt: number
  /** Of its streams on the disk. */
  bytes: number
}

const ownerShape = z.object({ guests: z.object({ work: z.string(), tasters: z.string() }) })

/** The tables in a hub's folder, the oldest first: those that nobody closed are among them. */
export function keptTables(folder: string): KeptTable[] {
  const claims = join(folder, 'accounts')
  if (!existsSync(claims)) return []
  return readdirSync(claims)
    .filter((file) => file.endsWith('.jwt'))
    .flatMap((file) => tableOf(folder, readClaim(readFileSync(join(claims, file), 'utf8'))))
    .toSorted((one, other) => one.signedAt - other.signedAt)
}

function tableOf(folder: string, claim: ClaimRead | null): KeptTable[] {
  const read = ownerShape.safeParse(claim?.says)
  if (!claim || !read.success) return []
  const { work, tasters } = read.data.guests
  return [
    {
      name: claim.subject.slice(0, 8),
      accounts: [claim.subject, work, tasters],
      signedAt: claim.issuedAt,
      bytes: bytesIn(streamsOf(folder, claim.subject)),
    },
  ]
}

/** Takes a table off a stopped hub with all that it held there: nobody gets in any more. What the notebooks keep stays. */
export function forgetTable(folder: string, { accounts }: KeptTable): void {
  for (const account of accounts) {
    rmSync(join(folder, 'accounts', `${account}.jwt`), { force: true })
    rmSync(streamsOf(folder, account), { recursive: true, force: true })
  }
}

const streamsOf = (folder: string, account: string) => join(folder, 'streams', 'jetstream', account)

function bytesIn(folder: string): number {
  if (!existsSync(folder)) return 0
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .reduce((sum, each) => sum + statSync(join(each.parentPath, each.name)).size, 0)
}
