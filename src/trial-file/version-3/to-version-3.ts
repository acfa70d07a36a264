import type { Migration } from '@/trial-file/migration.ts'
import { toleranceEitherWay } from './tolerance-either-way.ts'
import { version2File } from './version-2-file.ts'

/** From the second version to the third: a step's tolerance, early and late apart. */
export const toVersion3: Migration = {
  to: 3,
  oldFile: version2File,
  content: toleranceEitherWay,
  kitchenThing: (old) => old,
  settings: (old) => old,
}
