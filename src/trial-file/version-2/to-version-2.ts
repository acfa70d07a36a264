import type { Migration } from '@/trial-file/migration.ts'
import { oneEntryABake } from './one-entry-a-bake.ts'
import { version1File } from './version-1-file.ts'

/** From the first version to the second: a bake is one entry. */
export const toVersion2: Migration = {
  to: 2,
  oldFile: version1File,
  content: oneEntryABake,
  kitchenThing: (old) => old,
  settings: (old) => old,
}
