import type { Settings } from './settings-record.ts'
import type { Store } from './store.ts'
import { renewSummaries } from './stored-summaries.ts'

const firstSettings = (device: string): Settings => ({
  ...{ key: 'settings', device, appearance: 'system', temperatureUnit: 'celsius' },
  cautionsSeen: [],
})

/** What is done once at opening, before anything else gets through: this device gets its name, stale summaries are renewed. */
export async function makeReady(store: Store, newId: () => string): Promise<void> {
  await store.transaction('rw', store.settings, async () => {
    if (!(await store.settings.get('settings'))) await store.settings.put(firstSettings(newId()))
  })
  await renewSummaries(store)
}
