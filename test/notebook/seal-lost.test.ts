import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import { tableFindings } from '@/core/findings/at-table/table-findings.ts'
import { scoresOfTrial } from '@/core/findings/table/scores-of-trial.ts'
import { loggedMixes } from '@/core/learned/logged-mixes.ts'
import { levelsUnknown, sealed } from '@/core/seal/sealed.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import { tableSentences } from '@/core/wording/findings/table-sentences.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'
import { writeTrialFile } from '@/trial-file/write-trial-file.ts'
import { aloneTrial } from '../core/tasting/alone-trial.ts'
import { freshName, notebookWithTrial } from './notebook-of.ts'

const refused = { reason: 'refused-record' }

/** One person has scored one sample; then the tasting was closed early. */
async function closed(atTable: Parameters<typeof aloneTrial>[0]) {
  const whole = aloneTrial(atTable)
  const [session] = whole.sessions
  if (!session) throw new Error('a session')
  const notebook = await notebookWithTrial(freshName(), whole)
  const inSession = { trialId: 'trial-1', sessionId: session.id }
  await notebook.sealBallot({
    ...{ ...inSession, tasterId: 'club-1' },
    about: { kind: 'serving', id: session.dealt.tasterOrders[0]?.servingIds[0] ?? '' },
    answers: ['liking', 'chew', 'smell'].map((responseId) => ({ responseId, value: 3 })),
  })
  const about = { kind: 'session', id: session.id } as const
  await notebook.log({ ...inSession, kind: 'tasting-closed', about, reason: 'the cups fell' })
  const end = (lost: string) => notebook.log({ ...inSession, kind: 'unsealed', about, lost })
  const now = async () => {
    const held = await notebook.wholeTrial('trial-1')
    if (!held) throw new Error('the notebook holds the trial')
    return held
  }
  return { end, now, session }
}

for (const [what, atTable] of [
  ['tickets', { cups: true }],
  ['letters under plates', { shuffledPlates: true }],
] as const)
  test(`S22: with its ${what} lost a session is ended for a reason, and nothing tells its levels any more`, async () => {
    const { end, now, session } = await closed(atTable)
    await expect(end('  ')).rejects.toMatchObject(refused)
    expect(sealed(await now())).toBe(true)
    await end('the cat took them')
    const whole = await now()
    expect(sealed(whole)).toBe(false)
    expect(levelsUnknown(session, whole.events)).toBe('cups' in atTable)
    expect(scoresOfTrial(whole, { unsealed: false })).toMatchObject({
      ok: true,
      scores: { rows: [], tellApart: [] },
    })
    if ('cups' in atTable) {
      expect(loggedMixes(whole)).toEqual([])
      expect(fairnessOfTrial(whole).every(({ when }) => when === 'before')).toBe(true)
    }
    const found = tableFindings(whole, { unsealed: false })
    if (!found.ok) throw new Error(found.reason)
    expect(tableSentences(found, String).join()).toContain('“the cat took them”')
    const read = readTrialFile(writeTrialFile(whole))
    expect(read.ok).toBe(true)
  })

test('S22: where nothing was shuffled nothing is lost, and a trial that lost nothing is read as it is', async () => {
  const { end, now } = await closed({})
  await expect(end('no reason at all')).rejects.toMatchObject(refused)
  const whole = await now()
  expect(toldTrial(whole)).toBe(whole)
})
