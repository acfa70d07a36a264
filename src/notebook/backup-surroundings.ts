import { strFromU8 } from 'fflate'
import * as z from 'zod/mini'
import { houseShape } from '@/core/house/house-record.ts'
import { kitchenThingShape } from '@/core/kitchen/kitchen-record.ts'
import type { Content } from '@/trial-file/migration.ts'
import { presentChain } from '@/trial-file/present-chain.ts'
import { backedUpSettingsShape, backupShape } from './backup-record.ts'
import type { ZipReader } from './zip-reader.ts'

/** A JSON file of the backup, or undefined when it is missing or no JSON. */
function jsonFile(zip: ZipReader, name: string): unknown {
  const bytes = zip.read([name])[name]
  if (!bytes) return undefined
  try {
    return JSON.parse(strFromU8(bytes))
  } catch {
    return undefined
  }
}

/** The version a backup was written by; undefined when the zip is no backup. */
export function backupVersion(zip: ZipReader): number | undefined {
  const told = backupShape.safeParse(jsonFile(zip, 'backup.json'))
  return told.success ? told.data.version : undefined
}

/** Kitchen, house formulas and settings of a backup, brought up to the present version and checked; undefined when they do not hold. */
export function backupSurroundings(zip: ZipReader, version: number) {
  const steps = presentChain.migrations.slice(version - 1)
  const asList = z.array(z.looseObject({})).safeParse(jsonFile(zip, 'kitchen.json'))
  // A backup from before there were house formulas has no such file.
  const asHouses = z.array(houseShape).safeParse(jsonFile(zip, 'houses.json') ?? [])
  const asRecord = z.looseObject({}).safeParse(jsonFile(zip, 'settings.json'))
  if (!asList.success || !asRecord.success || !asHouses.success) return undefined
  const things = asList.data.map((thing: Content) =>
    steps.reduce((old, step) => step.kitchenThing(old), thing),
  )
  const kitchen = z.array(kitchenThingShape).safeParse(things)
  const settings = backedUpSettingsShape.safeParse(
    steps.reduce((old: Content, step) => step.settings(old), asRecord.data),
  )
  return kitchen.success && settings.success
    ? { kitchen: onceEach(kitchen.data), houses: onceEach(asHouses.data), settings: settings.data }
    : undefined
}

/** Of things that a spoiled file names twice, the first. */
function onceEach<Thing extends { id: string }>(things: readonly Thing[]): Thing[] {
  const firsts = new Map<string, Thing>()
  for (const thing of things) if (!firsts.has(thing.id)) firsts.set(thing.id, thing)
  return [...firsts.values()]
}
