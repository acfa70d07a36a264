import type { Chain, Content, Migration } from './migration.ts'
import { shapeTroubles } from './shape-troubles.ts'
import type { FileTrouble } from './trouble.ts'

export type Migrated = { ok: true; content: Content } | { ok: false; troubles: FileTrouble[] }

/** Freezes a document through and through, so that a migration cannot change what it was given. */
function freeze(value: unknown): void {
  const open: unknown[] = [value]
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (next === null || typeof next !== 'object') continue
    Object.freeze(next)
    open.push(...Object.values(next))
  }
}

function stepped(old: Content, step: Migration): Content {
  const { kitchen, ...rest } = old
  const things = Array.isArray(kitchen) ? kitchen : []
  return {
    ...step.content(rest),
    version: step.to,
    kitchen: things.map((thing: Content) => step.kitchenThing(thing)),
  }
}

/**
 * A trial file's content brought from its own version to the chain's: at each step it is checked whole by the frozen shape
 * of its version, then moved on. A step that fails is a trouble, not a crash; what was given is never changed.
 */
export function migrateContent(given: Content, from: number, chain: Chain): Migrated {
  let content = given
  for (const step of chain.migrations.slice(from - 1)) {
    const checked = step.oldFile.safeParse(content)
    if (!checked.success)
      return { ok: false, troubles: shapeTroubles(checked.error.issues, content) }
    const own: Content = JSON.parse(JSON.stringify(content))
    freeze(own)
    try {
      content = stepped(own, step)
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error)
      const failed = { fromVersion: step.to - 1, toVersion: step.to, detail }
      return { ok: false, troubles: [{ reason: 'migration-failed', ...failed }] }
    }
  }
  return { ok: true, content }
}
