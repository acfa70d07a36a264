import { dataVersion } from './data-version.ts'
import { provedChain } from './migration.ts'

/** Every migration there has been; the newest stands last. */
export const presentChain = provedChain({ version: dataVersion, migrations: [] })
