import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { commandOf } from '@/cli/command.ts'
import { CommandTrouble } from '@/cli/trouble.ts'
import { verbs } from '@/cli/verbs.ts'
import { chanceFrom, wholeBetween } from '@/core/design/chance.ts'
import { type BackupSource, backupSource, fuzzBackup, HalfTaken } from './fuzz-backup.ts'
import { scoresTable, wideTable } from './made-tables.ts'
import { type Json, mutatedDocument } from './mutated-document.ts'
import { mutatedTable } from './mutated-table.ts'
import { spoiledSlip } from './spoiled-slip.ts'

/** What came of one made-up file: refused by every verb, or answered by those that could. */
export interface FuzzOutcome {
  kind: 'trial' | 'table' | 'slip' | 'backup'
  came: 'refused' | 'answered'
  /** True where the day was planned too: that search gives itself two seconds more. */
  searched?: boolean
}

export interface FuzzSources {
  documents: Json[]
  tables: string[][][]
  backup: BackupSource
}

/** The samples, tables and the backup that are spoiled. */
export async function fuzzSources(root: string): Promise<FuzzSources> {
  const documentOf = (path: string): Json => JSON.parse(readFileSync(join(root, path), 'utf8'))
  const tableOf = (path: string) =>
    readFileSync(join(root, path), 'utf8')
      .trim()
      .split(/\r?\n/)
      .map((line) => line.split(';'))
  return {
    documents: [
      documentOf('trials/flatbread-hydration.json'),
      documentOf('trials/pan-loaf-salt.json'),
      documentOf('test/trial-file/version-1/flatbread-hydration.json'),
    ],
    tables: [
      scoresTable(1),
      scoresTable(2),
      wideTable,
      tableOf('test/journeys/tasting-elsewhere.csv'),
    ],
    backup: await backupSource(),
  }
}

const trialVerbs = ['weigh', 'fairness', 'detect', 'findings', 'report'] as const

/** What a verb answers of a file; undefined where it refuses with a trouble in words. Anything else it throws is a defect. */
async function answered(name: string, words: readonly string[]): Promise<string | undefined> {
  const load = verbs[name]
  if (!load) throw new Error(`no verb ${name}`)
  const verb = await load()
  const asked = commandOf(name, verb, words)
  if (asked === 'help') throw new Error('nobody asked for help')
  try {
    return await verb.answer(asked)
  } catch (trouble) {
    if (!(trouble instanceof CommandTrouble)) throw trouble
    if (trouble.message.trim() === '') throw new Error(`${name} refuses without a word`)
    return undefined
  }
}

const notANumber = /\b(NaN|Infinity|undefined|\[object Object\])\b/

/**
 * One spoiled file, drawn by its number, given to the reader and every verb (one that `check` refuses to one other, drawn too;
 * every eighth that it takes to the planning of the day as well); a backup is restored, a ballot slip given to its readers.
 * Throws where anything throws but a trouble in words, where a verb prints what is no number or takes what `check` refuses.
 */
export async function fuzzCase(
  seed: number,
  number: number,
  { documents, tables, backup }: FuzzSources,
  folder: string,
): Promise<FuzzOutcome> {
  const chance = chanceFrom(seed, number)
  const kind = wholeBetween(chance, 1, 20)
  if (kind <= 2) return { kind: 'backup', came: await fuzzBackup(chance, backup) }
  if (kind <= 5) return { kind: 'slip', came: spoiledSlip(chance) }
  if (kind <= 10) {
    const table = tables[wholeBetween(chance, 0, tables.length - 1)] ?? []
    const file = join(folder, 'spoiled.csv')
    writeFileSync(file, mutatedTable(chance, table))
    const answer = await answered('findings', [file])
    if (answer !== undefined) refuseStrange('findings', answer)
    return { kind: 'table', came: answer === undefined ? 'refused' : 'answered' }
  }
  const document = documents[wholeBetween(chance, 0, documents.length - 1)] ?? null
  const file = join(folder, 'spoiled.json')
  writeFileSync(file, mutatedDocument(chance, document))
  const checked = await answered('check', [file])
  const one = trialVerbs[wholeBetween(chance, 0, trialVerbs.length - 1)] ?? 'weigh'
  const searched = checked !== undefined && wholeBetween(chance, 1, 8) === 1
  const asked = checked === undefined ? [one] : searched ? [...trialVerbs, 'clock'] : trialVerbs
  for (const name of asked) {
    const more = name === 'findings' || name === 'report' ? ['--unseal'] : []
    if (name === 'report') more.push('--out', join(folder, 'report.html'))
    const answer = await answered(name, [file, ...more])
    if (answer === undefined) continue
    if (checked === undefined) throw new HalfTaken(`${name} takes what check refuses`)
    refuseStrange(name, answer)
  }
  return { kind: 'trial', came: checked === undefined ? 'refused' : 'answered', searched }
}

function refuseStrange(name: string, answer: string): void {
  const found = notANumber.exec(answer)
  if (found)
    throw new Error(
      `${name} prints ${found[0]}: ${answer.slice(Math.max(0, found.index - 80), found.index + 40)}`,
    )
}
