import { addedSessions, earlyLooks, peeks } from '@/core/seal/looks.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { methodNotes } from '@/core/wording/findings/method-notes.ts'
import type { CivilClock } from '@/core/wording/words/civil-time.ts'
import { momentText } from '@/core/wording/words/date-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'
import type { ReportSection } from './report-block.ts'

/** What each number is; the re-drawing is made on demand and stands in no report. */
const { bootstrap: _, ...methods } = methodNotes

/** Everything someone else needs to check the answer: looks before the end, seeds, revisions, methods with sources. */
export function originSection(whole: WholeTrial, clock: CivilClock): ReportSection {
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
          looks.length === 0
            ? 'Nobody opened the findings before the last planned session.'
            : `The findings were opened before the last planned session: ${listText(looks.map(({ at }) => momentText(at, plan.zone, clock)))}. Looking early makes chance finds likelier.`,
          ...(added.length > 0
            ? [
                `${countText(added.length, 'session was', 'sessions were')} added after the planned ones.`,
              ]
            : []),
          ...(peeked.length > 0
            ? [
                `Somebody looked at what a code stood for before the unsealing, ${countText(peeked.length, 'time')}.`,
              ]
            : []),
          `Draws start from seed ${whole.trial.seed}; each session keeps its own: ${listText(whole.sessions.map(({ dealt }) => String(dealt.seed))) || 'none yet'}.`,
          `The plan stands at revision ${plan.revision}.`,
        ],
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
