import { fairnessOfTrial } from '@/core/fairness/fairness-of-trial.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { FoundScores } from '@/core/report/found-scores.ts'
import type { ReportSection } from '@/core/report/report-block.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { alsoSeen, lookedAt } from '@/core/wording/findings/also-seen.ts'
import { type Naming, namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { headline } from '@/core/wording/findings/headline.ts'
import { rankingSentence } from '@/core/wording/findings/ranking-sentence.ts'
import { tellApartSentence } from '@/core/wording/findings/tell-apart-sentence.ts'
import { servingText } from '@/core/wording/plan/plan-text.ts'
import { minutesBetween } from '@/core/wording/words/duration-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'

/** Who tasted what, how blind, how it was served, and how fresh; sets to tell apart with what came of them. */
export function tastingSection(
  whole: WholeTrial,
  { scores, findings }: FoundScores,
): ReportSection {
  const plan = planInForce(whole)
  const tasted = scores.rows.filter(({ taster }) => taster !== null)
  // Where only an order is asked, or a set, nothing is scored: the ballots say who tasted.
  const sat =
    tasted.length > 0
      ? tasted.map(({ taster }) => taster)
      : effectiveBallots(whole.ballots).map(({ tasterId }) => tasterId)
  const tasters = new Set(sat).size
  const knowing = plan.tasters.filter(({ knows }) => knows).length
  const minutes = tasted.flatMap((row) => row.minutes ?? [])
  const blind =
    knowing === 0
      ? 'All tasted blind'
      : `${asSentenceStart(countText(knowing, 'taster'))} knew which is which; the others tasted blind`
  const items = [
    tasters === 0
      ? 'Nobody has tasted yet.'
      : `${asSentenceStart(countText(tasters, 'taster'))}, ${countText(sat.length, 'ballot')} in ${countText(whole.sessions.length, 'session')}. ${blind}; the key was kept by ${plan.keyKeptBy === 'helper' ? 'a helper' : 'the baker'}.`,
    `${asSentenceStart(servingText(plan))}. ${plan.servingRule}`.trim(),
    minutes.length === 0
      ? ''
      : `Tasted ${minutesBetween({ low: Math.min(...minutes), high: Math.max(...minutes) }, 0)} out of the oven.`,
    ...(findings.rankings ?? []).map((ranking) => rankingSentence(ranking, findings)),
    ...findings.discrimination.map((test) => tellApartSentence(test, findings)),
  ]
  return {
    id: 'page-tasting',
    title: 'The tasting',
    blocks: [{ kind: 'list', items: items.filter((text) => text !== '') }],
  }
}

/** How many of the riders stand on the pages; the appendix has all. */
const mostRiders = 4

/** What else changed with the level and was large enough to name, the most pressing first; nothing where none was. */
export function ridersSection(whole: WholeTrial, { findings }: FoundScores): ReportSection[] {
  const plan = planInForce(whole)
  const open = fairnessOfTrial(whole).filter(
    ({ severity, code }) => severity !== 'fine' && !ofElsewhere.has(code),
  )
  const logged = open.filter(({ when, severity }) => when === 'after' || severity === 'fix')
  const items = [...logged, ...open.filter((item) => !logged.includes(item))]
  if (items.length === 0) return []
  const said = items.slice(0, mostRiders).map((item) => {
    const { title, sentence } = fairnessText(item, plan)
    return `${title}: ${sentence}`
  })
  const more = items.length - said.length
  return [
    {
      id: 'page-riders',
      title: `What could be taken for ${midSentence(findings.factor.name)}`,
      blocks: [
        {
          kind: 'list',
          items: [
            ...said,
            ...(more > 0
              ? [`${asSentenceStart(countText(more, 'smaller thing'))} in the appendix.`]
              : []),
          ],
        },
      ],
    },
  ]
}

/** Said on the pages under its own heading: departures, and how much evidence there is. */
const ofElsewhere: ReadonlySet<string> = new Set([
  'departed',
  'one-session',
  'few-tasters',
  'few-sessions',
])

const mostBeside = 4

/** What was seen of the other responses, a hint each; nothing where there are none. */
export function besideSection({ scores, findings }: FoundScores): ReportSection[] {
  const [, ...others] = findings.responses
  const seen = others.flatMap((found, index) =>
    found.n === 0 ? [] : [underItsName(found, namingOf(findings, scores.responses[index + 1]))],
  )
  if (seen.length === 0) return []
  const more = seen.length - mostBeside
  return [
    {
      id: 'page-beside',
      title: 'Also seen',
      blocks: [
        {
          kind: 'list',
          items: [
            ...seen.slice(0, mostBeside),
            ...(more > 0
              ? [`${asSentenceStart(countText(more, 'more response'))} in the appendix.`]
              : []),
          ],
        },
        { kind: 'text', text: asSentenceStart(lookedAt(seen.length)) },
      ],
    },
  ]
}

/** A sentence that begins with the name of its response needs no name before it. */
function underItsName(found: ResponseFindings, naming: Naming): string {
  const { shown } = headline(found, naming)
  return shown.startsWith(found.name) ? shown : alsoSeen(found, naming)
}
