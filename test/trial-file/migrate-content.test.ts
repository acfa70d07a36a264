import { describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { migrateContent } from '@/trial-file/migrate-content.ts'
import { type Chain, type Content, type Migration, provedChain } from '@/trial-file/migration.ts'
import { presentChain } from '@/trial-file/present-chain.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { wholeTrialOf } from '../whole-trial-of.ts'

const list = z.array(z.looseObject({}))
const rest = { plans: list, sessions: list, events: list, ballots: list, photos: list }
const head = { format: z.literal('evenhand-trial') }

/** Made-up past: in version 1 the note was called remark and a taster had a sign; version 2 renamed the note. */
const toTwo: Migration = {
  to: 2,
  oldFile: z.strictObject({
    ...head,
    version: z.literal(1),
    trial: z.looseObject({ remark: z.string() }),
    kitchen: z.array(z.looseObject({ kind: z.string() })),
    ...rest,
  }),
  content: (old) => {
    const { remark, ...trial } = old.trial as Content
    return { ...old, trial: { ...trial, note: remark } }
  },
  kitchenThing: (old) => old,
  settings: (old) => old,
}
const toThree: Migration = {
  to: 3,
  oldFile: z.strictObject({
    ...head,
    version: z.literal(2),
    trial: z.looseObject({ note: z.string() }),
    kitchen: z.array(z.looseObject({ kind: z.string() })),
    ...rest,
  }),
  content: (old) => old,
  kitchenThing: (old) => {
    const { sign, ...thing } = old
    return thing.kind === 'taster' ? { ...thing, initials: sign } : old
  },
  settings: (old) => old,
}
const chain: Chain = provedChain({ version: 3, migrations: [toTwo, toThree] })

/** The sound trial as version 1 of the made-up past would have written it. */
function oldDocument() {
  const { note, ...trial } = wholeTrialOf().trial
  const kitchen = wholeTrialOf().kitchen.map((thing) => {
    if (thing.kind !== 'taster') return thing
    const { initials, ...others } = thing
    return { ...others, sign: initials }
  })
  const old = { ...wholeTrialOf(), trial: { ...trial, remark: note }, kitchen }
  return { format: 'evenhand-trial', version: 1, ...old }
}

describe('migrations', () => {
  test('F11: an older file is checked by the shape of its time, then brought up step by step', () => {
    expect(readTrialFile(JSON.stringify(oldDocument()), chain)).toEqual({
      ok: true,
      whole: wholeTrialOf(),
      note: '',
    })
  })

  test('F11: a file of the second version takes the last step only', () => {
    const { kitchen } = oldDocument()
    const document = { ...wholeTrialOf(), kitchen, format: 'evenhand-trial', version: 2 }
    expect(readTrialFile(JSON.stringify(document), chain)).toMatchObject({
      ok: true,
      whole: wholeTrialOf(),
    })
  })

  test('F11: an older file that does not fit the shape of its time is refused by place', () => {
    const old = oldDocument()
    const document = { ...old, trial: { ...old.trial, remark: 3 } }
    expect(readTrialFile(JSON.stringify(document), chain)).toEqual({
      ok: false,
      troubles: [{ reason: 'shape', pointer: '/trial/remark', expected: 'text', found: '3' }],
    })
  })

  test('F12: what was given to a migration is never changed', () => {
    const greedy: Migration = {
      ...toTwo,
      content: (old) => Object.assign(old.trial as object, { note: 'taken' }) as Content,
    }
    const given = oldDocument()
    const migrated = migrateContent(given, 1, { version: 3, migrations: [greedy, toThree] })
    expect(migrated).toMatchObject({ ok: false, troubles: [{ reason: 'migration-failed' }] })
    expect(given).toEqual(oldDocument())
    expect(migrateContent(given, 1, chain).ok).toBe(true)
    expect(given).toEqual(oldDocument())
  })

  test('F13: a migration that throws is a trouble that names its step', () => {
    const failing: Migration = {
      ...toThree,
      kitchenThing: () => {
        throw new Error('no sign')
      },
    }
    const broken = { version: 3, migrations: [toTwo, failing] }
    expect(readTrialFile(JSON.stringify(oldDocument()), broken)).toEqual({
      ok: false,
      troubles: [{ reason: 'migration-failed', fromVersion: 2, toVersion: 3, detail: 'no sign' }],
    })
  })

  test('F14: a chain that is not numbered by one throws', () => {
    expect(() => provedChain({ version: 3, migrations: [toThree, toTwo] })).toThrow('migration 0')
    expect(() => provedChain({ version: 3, migrations: [toTwo] })).toThrow('2 migrations')
    expect(provedChain(presentChain)).toBe(presentChain)
  })

  test('F4: a file newer than the chain is refused by its number', () => {
    const text = writeTrialFile(wholeTrialOf()).replace(/"version": \d+/, '"version": 4')
    expect(readTrialFile(text, chain)).toEqual({
      ok: false,
      troubles: [{ reason: 'newer-version', found: 4, known: 3 }],
    })
  })
})
