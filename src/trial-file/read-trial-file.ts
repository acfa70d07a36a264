import { referenceTroubles } from '@/core/whole-trial/reference-troubles.ts'
import type { ReferenceTrouble } from '@/core/whole-trial/references.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { jsonPlace } from './json-place.ts'
import { migrateContent } from './migrate-content.ts'
import type { Chain, Content } from './migration.ts'
import { presentChain } from './present-chain.ts'
import { shapeTroubles } from './shape-troubles.ts'
import { trialContentShape, trialFormat } from './trial-file-shape.ts'
import { type FileTrouble, mostTroubles } from './trouble.ts'
import { valueWords } from './trouble-words.ts'

export type ReadTrialFile =
  | { ok: true; whole: WholeTrial; note: string }
  | { ok: false; troubles: FileTrouble[] }

const refused = (...troubles: FileTrouble[]): ReadTrialFile => ({
  ok: false,
  troubles: troubles.slice(0, mostTroubles),
})

/** The document in a text, or the place where it is no JSON. A byte order mark in front is passed over (RFC 8259, 8.1). */
function documentOf(text: string): { document: unknown } | { trouble: FileTrouble } {
  const json = text.startsWith('\ufeff') ? text.slice(1) : text
  try {
    return { document: JSON.parse(json) }
  } catch (failure) {
    const place = jsonPlace(json)
    if (!place) throw failure
    return { trouble: { reason: 'not-json', ...place } }
  }
}

const isTrialFile = (document: unknown): document is Content =>
  document !== null &&
  typeof document === 'object' &&
  Reflect.get(document, 'format') === trialFormat

const isVersion = (version: unknown): version is number =>
  typeof version === 'number' && Number.isInteger(version) && version >= 1

/**
 * A trial file's text as the trial it holds, checked whole: JSON, format name, version, shape, then every reference. An
 * older file is migrated first. Refuses with all troubles of the first stage that has any, at most fifty; a file of a
 * newer version is refused by its number, one of another format as no trial file.
 */
export function readTrialFile(text: string, chain: Chain = presentChain): ReadTrialFile {
  const read = documentOf(text)
  if ('trouble' in read) return refused(read.trouble)
  if (!isTrialFile(read.document)) return refused({ reason: 'not-a-trial-file' })
  const found = read.document.version
  if (!isVersion(found))
    return refused({
      reason: 'shape',
      pointer: '/version',
      expected: 'a whole number from 1 up',
      found: valueWords(found),
    })
  if (found > chain.version)
    return refused({ reason: 'newer-version', found, known: chain.version })
  const migrated = migrateContent(read.document, found, chain)
  return migrated.ok ? checkedWhole(migrated.content) : refused(...migrated.troubles)
}

function checkedWhole({ format: _format, version: _version, ...content }: Content): ReadTrialFile {
  const checked = trialContentShape.safeParse(content)
  if (!checked.success) return refused(...shapeTroubles(checked.error.issues, content))
  const { note = '', ...whole } = checked.data
  const missing = [...referenceTroubles(whole), ...followsItself(whole)]
  if (missing.length > 0)
    return refused(...missing.map((each) => ({ reason: 'reference' as const, ...each })))
  return { ok: true, whole, note }
}

/** A trial cannot carry on from itself: whoever followed it back would never arrive. */
function followsItself({ trial }: WholeTrial): ReferenceTrouble[] {
  if (trial.follows?.trialId !== trial.id) return []
  return [{ pointer: '/trial/follows/trialId', names: trial.id }]
}
