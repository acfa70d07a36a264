import { Dexie } from 'dexie'
import { newestFirst } from './book-order.ts'
import { isDamaged } from './notebook-failure.ts'
import type { Store } from './store.ts'
import { type Summary, summaryShape } from './summary-record.ts'

/**
 * A line of the home list as its trial stands: the stored one where it fits its shape and the trial's revision, else made
 * anew; undefined where the trial is gone or damaged.
 */
export async function summaryNow(
  store: Store,
  stored: Pick<Summary, 'trialId'>,
): Promise<Summary | undefined> {
  const trial = await store.trials.get(stored.trialId)
  if (!trial) return undefined
  const read = summaryShape.safeParse(stored)
  if (read.success && read.data.revision === trial.revision) return read.data
  return await madeAnew(store, trial.id)
}

/**
 * What makes a line is loaded when one is missing: a visit that finds all of them stored needs none of it. A damaged trial has
 * none: it says so where it is opened, a backup names it, and all others go on.
 */
async function madeAnew(store: Store, trialId: string): Promise<Summary | undefined> {
  const [{ summaryOf }, { storedTrial }] = await Dexie.waitFor(
    Promise.all([import('./summary-of.ts'), import('./stored-trial.ts')]),
  )
  try {
    const whole = await storedTrial(store, trialId)
    return whole && summaryOf(whole)
  } catch (failure) {
    if (isDamaged(failure)) return undefined
    throw failure
  }
}

/**
 * Lines of the trials that have none stored, such as those a press at the bench has just changed. By the numbers alone where
 * none is missing (a line never outlives its trial, so as many lines as trials are all lines), else by the keys.
 */
export async function summariesMissing(store: Store): Promise<Summary[]> {
  const [trials, lines] = await Promise.all([store.trials.count(), store.summaries.count()])
  if (trials === lines) return []
  const [trialIds, lineIds] = await Promise.all([
    store.trials.toCollection().primaryKeys(),
    store.summaries.toCollection().primaryKeys(),
  ])
  const known = new Set(lineIds)
  const missing = trialIds.filter((trialId) => !known.has(trialId))
  const made = await Promise.all(missing.map((trialId) => madeAnew(store, trialId)))
  return made.filter((line) => line !== undefined)
}

/**
 * All lines as they are stored, none checked: of thousands reading takes longest, so they are held until one changes. Where they
 * are held they are counted alone, so that a live query sees what it watches.
 */
export async function allLines(store: Store): Promise<readonly Summary[]> {
  const held = store.heldLines
  if (held) {
    const lines = await store.summaries.count()
    if (held === store.heldLines && lines === held.length) return held
  }
  const { linesChanged } = store
  const lines = await store.summaries.toArray()
  if (linesChanged !== store.linesChanged) return lines
  // Several may have read at once: all of them hold the lines of the first, and with them what was worked out of each.
  store.heldLines ??= lines
  return store.heldLines
}

/** The lines of all trials that are asked for, newest work first. Only reads, so that a live query may use it. */
export async function storedSummaries(
  store: Store,
  { binned = false, archived = false }: { binned?: boolean; archived?: boolean } = {},
): Promise<Summary[]> {
  const lines = await store.transaction('r', store.tables, async () => {
    const kept = await store.summaries.toArray()
    const now = await Promise.all(kept.map((line) => summaryNow(store, line)))
    return [...now.filter((line) => line !== undefined), ...(await summariesMissing(store))]
  })
  return lines
    .filter((line) => (binned || !line.binned) && (archived || !line.archived))
    .toSorted(newestFirst)
}

/**
 * The lines of the trials that carry another one on or are carried on, archived ones too. All are read as they are stored,
 * and only those that are asked for are checked: of thousands most stand alone. Only reads.
 */
export async function linkedSummaries(store: Store): Promise<Summary[]> {
  return await store.transaction('r', store.tables, async () => {
    const [kept, fresh] = await Promise.all([allLines(store), summariesMissing(store)])
    const all = [...kept, ...fresh].filter(({ binned }) => !binned)
    const known = new Set(all.map(({ trialId }) => trialId))
    const linked = new Set<string>()
    for (const { trialId, follows } of all)
      if (follows && known.has(follows.trialId)) linked.add(trialId).add(follows.trialId)
    const lines = all.filter(({ trialId }) => linked.has(trialId))
    const now = await Promise.all(lines.map((line) => summaryNow(store, line)))
    return now.filter((line) => line !== undefined)
  })
}

const formKey = 'form-of-lines'
/** Raised when a line comes to hold more than lines did before: those that are stored are then made anew, once. */
const lineForm = '2'

/**
 * Stores the lines that are missing, and drops those whose trial is gone. By the keys: a line is checked when it is shown.
 * Lines that were stored before they held what is searched are made anew; that of a damaged trial stays as it is.
 */
export async function renewSummaries(store: Store): Promise<void> {
  await store.transaction('rw', store.tables, async () => {
    const known = new Set(await store.trials.toCollection().primaryKeys())
    const kept = await store.summaries.toCollection().primaryKeys()
    await store.summaries.bulkDelete(kept.filter((trialId) => !known.has(trialId)))
    await store.summaries.bulkPut(await summariesMissing(store))
    if ((await store.drafts.get(formKey))?.values.form === lineForm) return
    for (const line of await store.summaries.toArray())
      if (line.factorKind === undefined) await store.summaries.bulkPut(await lineAnew(store, line))
    await store.drafts.put({ key: formKey, values: { form: lineForm } })
  })
}

async function lineAnew(store: Store, { trialId, answer }: Summary): Promise<Summary[]> {
  const line = await madeAnew(store, trialId)
  return line ? [{ ...line, ...(answer === undefined || line.sealed ? {} : { answer }) }] : []
}
