import { addedSessions, earlyLooks, peeks } from '@/core/seal/looks.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { methodNotes } from '@/core/wording/findings/method-notes.ts'
import {
  addedSessionsText,
  dataText,
  earlyLooksText,
  peeksText,
  revisionText,
  seedsText,
} from '@/core/wording/findings/origin-text.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { momentText } from '@/core/wording/words/date-text.ts'
import { writtenInText } from '@/core/wording/words/manner-text.ts'
import type { ReportSection } from './report-block.ts'

/** What each number is; the re-drawing is made on demand and stands in no report. */
const { bootstrap: _, ...methods } = methodNotes

/** Everything someone else needs to check the answer: looks before the end, seeds, revisions, methods with sources. */
export function originSection(
  whole: WholeTrial,
  clock: CivilClock,
  made: { dataSha256?: string | undefined; version: string },
): ReportSection {
  const plan = planInForce(whole)
  const looks = earlyLooks(whole)
  const added = addedSessions(whole)
  const peeked = peeks(whole)
  return {
    id: 'origin',
    title: 'How to check it',
    blocks: [
      {
        kind: 'list',
        items: [
          earlyLooksText(looks.map(({ at }) => momentText(at, plan.zone, clock))),
          addedSessionsText(added.length),
          peeksText(peeked.length),
          seedsText(
            whole.trial.seed,
            whole.sessions.map(({ dealt }) => dealt.seed),
          ),
          revisionText(plan.revision),
          writtenInText(),
          made.dataSha256 === undefined ? '' : dataText(made.dataSha256, made.version),
        ].filter((text) => text !== ''),
      },
      { kind: 'heading', text: 'Methods' },
      {
        kind: 'facts',
        rows: Object.values(methods).map(({ title, text, source }) => ({
          term: title,
          text: `${text} ${source}`,
        })),
      },
    ],
  }
}
