import { strFromU8, strToU8, zipSync } from 'fflate'
import { type Chance, wholeBetween } from '@/core/design/chance.ts'
import { type Json, mutatedDocument } from './mutated-document.ts'

/** A backup unpacked: its files by name. */
export type BackupFiles = Record<string, Uint8Array>

/** A spoiled backup, and whether its files are still those that were backed up, but for damage to their bytes. */
export interface MutatedBackup {
  bytes: Uint8Array<ArrayBuffer>
  damagedOnly: boolean
}

const pick = <Item>(chance: Chance, items: readonly Item[]): Item => {
  const item = items[wholeBetween(chance, 0, items.length - 1)]
  if (item === undefined) throw new Error('nothing to pick from')
  return item
}

/** Names that no backup gives a file. */
const strangeNames = [
  ...['trials/__proto__.json', 'trials/../../x.json', 'trials/.json', 'trials//a.json'],
  ...[
    'pictures/constructor.png',
    `trials/${'x'.repeat(300)}.json`,
    'trials/ü.json',
    'backup.json/',
  ],
]

type Change = (chance: Chance, files: BackupFiles) => void

/** What another program, or a hand, may have done to the files before they were packed again. */
const changesOfFiles: readonly Change[] = [
  (chance, files) => {
    const documents = Object.entries(files).flatMap(([name, bytes]) => {
      const document = jsonOf(bytes)
      return document === undefined ? [] : [{ name, document }]
    })
    if (documents.length === 0) return
    const { name, document } = pick(chance, documents)
    files[name] = strToU8(mutatedDocument(chance, document))
  },
  (chance, files) => {
    Reflect.deleteProperty(files, pick(chance, Object.keys(files)))
  },
  (chance, files) => {
    const [from, to] = [pick(chance, Object.keys(files)), pick(chance, Object.keys(files))]
    files[to] = files[from] ?? new Uint8Array()
  },
  (chance, files) => {
    const bytes = files[pick(chance, Object.keys(files))] ?? new Uint8Array()
    files[pick(chance, strangeNames)] = bytes
  },
  (chance, files) => {
    files[pick(chance, Object.keys(files))] = new Uint8Array(wholeBetween(chance, 0, 2000))
  },
]

type Damage = (chance: Chance, zip: Uint8Array) => Uint8Array

/** What a stick, a cable or a cut-short copy may have done to the packed bytes. */
const damages: readonly Damage[] = [
  (chance, zip) => {
    for (let left = wholeBetween(chance, 1, 8); left > 0; left -= 1)
      zip[wholeBetween(chance, 0, zip.length - 1)] = wholeBetween(chance, 0, 255)
    return zip
  },
  (chance, zip) => {
    const at = wholeBetween(chance, 0, zip.length - 1)
    return zip.fill(pick(chance, [0, 255]), at, at + wholeBetween(chance, 1, 600))
  },
  (chance, zip) => zip.subarray(0, wholeBetween(chance, 0, zip.length - 1)),
  (chance, zip) => {
    const at = wholeBetween(chance, 0, zip.length - 1)
    return joined(zip.subarray(0, at), zip.subarray(at + wholeBetween(chance, 1, 40)))
  },
  (chance, zip) => joined(new Uint8Array(wholeBetween(chance, 1, 100)), zip),
  (chance, zip) => joined(zip, new Uint8Array(wholeBetween(chance, 1, 100))),
]

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  const whole = new Uint8Array(first.length + second.length)
  whole.set(first)
  whole.set(second, first.length)
  return whole
}

/** A backup with one to three changes: to its files before they are packed, or to the packed bytes. */
export function mutatedBackup(chance: Chance, backup: BackupFiles): MutatedBackup {
  const files: BackupFiles = { ...backup }
  const damagedOnly = wholeBetween(chance, 0, 1) === 1
  if (!damagedOnly)
    for (let left = wholeBetween(chance, 1, 3); left > 0; left -= 1)
      if (Object.keys(files).length > 0) pick(chance, changesOfFiles)(chance, files)
  const packed = zipSync(files, { level: pick(chance, [0, 6]) })
  const spoiled =
    damagedOnly || wholeBetween(chance, 1, 4) === 1 ? pick(chance, damages)(chance, packed) : packed
  return { bytes: new Uint8Array(spoiled), damagedOnly }
}

/** What a file says, where it is JSON. */
function jsonOf(bytes: Uint8Array): Json | undefined {
  try {
    return JSON.parse(strFromU8(bytes))
  } catch {
    return undefined
  }
}
