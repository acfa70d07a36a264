import { checked } from './checked.ts'
import { type Settings, settingsShape } from './settings-record.ts'
import type { Store } from './store.ts'

/** This device's settings, checked. They are made when the notebook is opened for the first time. */
export async function storedSettings(store: Store): Promise<Settings> {
  return checked(settingsShape, await store.settings.get('settings'), 'damaged')
}

/** The last running number this device has given out; 0 before the first. */
async function lastCount(store: Store): Promise<number> {
  const kept = await store.settings.get('count')
  return kept?.key === 'count' ? kept.count : 0
}

/**
 * The device and its next running numbers, as many as asked for. They are taken for good within the transaction that uses
 * them, so that two tabs never give out the same one.
 */
export async function nextCounts(
  store: Store,
  howMany: number,
): Promise<{ device: string; first: number }> {
  const { device } = await storedSettings(store)
  const last = await lastCount(store)
  await store.settings.put({ key: 'count', count: last + howMany })
  return { device, first: last + 1 }
}

/** Keeps the running number ahead of what this device wrote at another time and gets back now, from a file. */
export async function keepAhead(
  store: Store,
  written: readonly { device: string; count: number }[],
): Promise<void> {
  const { device } = await storedSettings(store)
  const own = written.filter((each) => each.device === device).map((each) => each.count)
  const last = await lastCount(store)
  await store.settings.put({ key: 'count', count: own.reduce((a, b) => Math.max(a, b), last) })
}
