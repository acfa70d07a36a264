import { dataVersion } from './data-version.ts'
import { provedChain } from './migration.ts'
import { toVersion2 } from './version-2/to-version-2.ts'

/** Every migration there has been; the newest stands last. */
export const presentChain = provedChain({ version: dataVersion, migrations: [toVersion2] })
