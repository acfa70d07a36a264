import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { PaperBallot } from '@/app/tasting/seat/paper-ballot.tsx'
import { QuestionEntry } from '@/app/tasting/seat/question-entry.tsx'
import {
  changedReference,
  withoutReference,
  withReference,
} from '@/core/plan-edits/responses/reference-pieces.ts'
import { blindView } from '@/core/tasting/blind-view.ts'
import { tasterProblems } from '@/core/trial/taster-problems.ts'
import { referencesEaten, referencesText } from '@/core/wording/tasting/reference-text.ts'
import { bytesOfSlip, readSlip } from '@/slip/ballot-slip.ts'
import { tastingTrial } from '../../../journeys/tasting-trial.ts'
import { madeSlip } from '../../../slip/made-slip.ts'
import { planOf } from '../../../trial-of/plan-of.ts'

const crisp = {
  kind: 'nine-point' as const,
  anchors: [
    { at: 1, text: 'soft' },
    { at: 9, text: 'very crisp' },
  ],
}
const compared = {
  ...crisp,
  references: [
    { at: 7, text: 'the plain cracker' },
    { at: 3, text: 'the milk roll' },
  ],
}
const said = 'To compare: 3 is the milk roll, 7 the plain cracker.'

/** The trial of the tests, its first question answered on this scale. */
function trialWith(scale: typeof crisp | typeof compared) {
  const [liking, ...others] = planOf().responses
  if (!liking) throw new Error('liking is asked')
  return tastingTrial({ responses: [{ ...liking, scale }, ...others] })
}

test('a reference piece is named, moved and taken out; what has no name says nothing', () => {
  const one = withReference(crisp)
  expect(one.references).toEqual([{ at: 7, text: '' }])
  expect(referencesText(one)).toBe('')
  const named = changedReference(one, 0, { text: 'the plain cracker' })
  const two = changedReference(withReference(named), 1, { text: 'the milk roll' })
  expect(two).toEqual(compared)
  expect(referencesText(two)).toBe(said)
  expect(withoutReference(withoutReference(two, 0), 0)).toEqual(crisp)
  // Nine points hold nine pieces, each at a point of its own.
  const full = Array.from({ length: 12 }).reduce<typeof one>((scale) => withReference(scale), crisp)
  expect(new Set(full.references?.map(({ at }) => at)).size).toBe(9)
  expect(full.references).toHaveLength(9)
})

test('reference pieces stand under their question on the device and an own phone, and on paper with a word on allergens', () => {
  const whole = trialWith(compared)
  const view = blindView(whole, whole.sessions[0]?.id ?? '', 'club-1')
  const [question] = view.questions
  if (!question) throw new Error('a question')
  const draft = { values: {} } as never
  expect(
    renderToStaticMarkup(createElement(QuestionEntry, { question, draft, trouble: undefined })),
  ).toContain(said)
  const paper = (sheet: typeof view) =>
    renderToStaticMarkup(createElement(PaperBallot, { name: 'AN', view: sheet, contains: '' }))
  expect(paper(view)).toContain(said)
  expect(paper(view)).toContain(referencesEaten)
  const bare = trialWith(crisp)
  expect(paper(blindView(bare, bare.sessions[0]?.id ?? '', 'club-1'))).not.toMatch(
    /To compare|eaten/,
  )
  const { responseId: _, ...asked } = question
  const read = readSlip(bytesOfSlip(madeSlip(4, 1, { questions: [asked] })))
  expect(read.ok && referencesText(read.slip.questions[0]?.scale ?? crisp)).toBe(said)
})

test('a reference piece whose name holds a figure or a level is asked about: every taster reads it', () => {
  const asked = (text: string) => {
    const [plan] = trialWith(changedReference(compared, 1, { text }) as typeof compared).plans
    return plan
      ? tasterProblems(plan).flatMap(({ path, reason }) =>
          reason === 'words-name-level' ? [path] : [],
        )
      : []
  }
  expect(asked('the milk roll')).toEqual([])
  expect(asked('bread of the 66.4')).toEqual(['/responses/0/scale/references/1/text'])
})
