import { checked } from './checked.ts'
import { storedSettings } from './next-counts.ts'
import { type Settings, settingsShape } from './settings-record.ts'
import type { Store } from './store.ts'

/** Changes some of this device's settings; its name in the log is not among them. */
export async function changeSettings(
  store: Store,
  change: Partial<Omit<Settings, 'key' | 'device'>>,
): Promise<void> {
  await store.transaction('rw', store.settings, async () => {
    const before = await storedSettings(store)
    const { key, device } = before
    await store.settings.put(checked(settingsShape, { ...before, ...change, key, device }))
  })
}
