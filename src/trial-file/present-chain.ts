import { dataVersion } from './data-version.ts'
import { provedChain } from './migration.ts'
import { toVersion2 } from './version-2/to-version-2.ts'
import { toVersion3 } from './version-3/to-version-3.ts'

/** Every migration there has been; the newest stands last. */
export const presentChain = provedChain({
  version: dataVersion,
  migrations: [toVersion2, toVersion3],
})
