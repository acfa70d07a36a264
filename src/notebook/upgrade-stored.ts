import type { Transaction } from 'dexie'
import type { Content, Migration } from '@/trial-file/migration.ts'
import { checked } from './checked.ts'

const parts = ['plans', 'sessions', 'events', 'ballots', 'photos'] as const

/**
 * Brings a stored notebook one version on: every trial is checked by the frozen shape of its time and migrated by the same
 * step as a trial file, then kitchen and settings; summaries are dropped, to be rebuilt. Anything that fails leaves the
 * notebook at its old version, untouched.
 */
export async function upgradeStored(transaction: Transaction, step: Migration): Promise<void> {
  const table = (name: string) => transaction.table<Content, string>(name)
  for (const trial of await table('trials').toArray()) {
    const rows: Record<string, Content[]> = {}
    for (const part of parts)
      rows[part] = await table(part).where('trialId').equals(String(trial.id)).toArray()
    const old = { trial, ...rows }
    const head = { format: 'evenhand-trial', version: step.to - 1 }
    checked(step.oldFile, { ...head, ...old, kitchen: [] }, 'damaged')
    const moved = step.content(old)
    await table('trials').put(moved.trial as Content)
    for (const part of parts) {
      await table(part).where('trialId').equals(String(trial.id)).delete()
      await table(part).bulkPut(moved[part] as Content[])
    }
  }
  const things = await table('kitchen').toArray()
  await table('kitchen').bulkPut(things.map((thing) => step.kitchenThing(thing)))
  const settings = await table('settings').get('settings')
  if (settings) await table('settings').put(step.settings(settings))
  await table('summaries').clear()
}
