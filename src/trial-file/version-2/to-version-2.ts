import type { Content, Migration } from '@/trial-file/migration.ts'
import { oneEntryABake } from './one-entry-a-bake.ts'
import { toleranceEitherWay } from './tolerance-either-way.ts'
import { version1File } from './version-1-file.ts'

/** What version 2 changed, each a small step of its own on a trial's content without its kitchen, in this order. */
const contentSteps: readonly ((old: Content) => Content)[] = [oneEntryABake, toleranceEitherWay]

/** From the first version to the second. */
export const toVersion2: Migration = {
  to: 2,
  oldFile: version1File,
  content: (old) => contentSteps.reduce((content, step) => step(content), old),
  kitchenThing: (old) => old,
  settings: (old) => old,
}
