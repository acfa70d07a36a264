import { looksOf } from '@/core/design/design-of-plan.ts'
import type { Detectable, DetectableReason, DetectableRung } from '@/core/design/detectable.ts'
import { type AskedOfPlan, askedOfPlan } from '@/core/design/what-shows.ts'
import type { WhatWouldHelp } from '@/core/design/what-would-help.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText, plainNumber } from '@/core/units/number-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { widestDifference } from '@/core/wording/words/within-scale.ts'

type AskedPlan = Pick<
  Plan,
  | 'tasters'
  | 'flights'
  | 'plannedSessions'
  | 'levels'
  | 'responses'
  | 'mainResponseId'
  | 'expectation'
  | 'writtenFirst'
>

/** What could be detected is said for the nine-point scale alone. */
const most = widestDifference('nine-point') ?? Number.POSITIVE_INFINITY

const needs: Readonly<Record<DetectableReason, string>> = {
  'needs-two-tasters': 'needs two tasters',
  'needs-two-flights': 'needs two flights',
  'needs-two-sessions': 'needs two sessions',
  'needs-two-blocks': 'needs two flights or sessions',
  'needs-two-levels': 'needs two levels',
  'factor-answers': 'see the factor',
}

/** What the plan could show, in plain words: the difference that would show, for these pieces and for the factor. */
export function detectSentences(now: Detectable, plan: AskedPlan): string {
  const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
  const design = [
    countText(plan.tasters.length, 'taster'),
    countText(plan.flights, 'flight'),
    countText(plan.plannedSessions, 'session'),
    countText(plan.levels.length, 'level'),
  ]
  const said = [
    `${asSentenceStart(`with ${design.slice(0, -1).join(', ')}`)} and ${design.at(-1)}:`,
    about(now.thesePieces, 'between these pieces'),
    now.theseDoughs.ok ? about(now.theseDoughs, 'between these doughs') : '',
    about(now.theFactor, 'of the factor itself, made again,', askedOfPlan(plan)),
    endingWords(now.theFactor, main?.margin ?? null, 'sessions'),
    now.theFactor.ok ? '' : endingWords(now.thesePieces, main?.margin ?? null, 'tasters'),
  ]
  const margin = main?.margin ?? null
  const power = now.theFactor.ok ? now.theFactor.pairPowerAtMargin : null
  if (margin !== null && power !== null)
    said.push(
      `A true difference of your margin, ${plainNumber(margin)}, would be found in ${decimalText(power * 100, 0)} of 100 such trials.`,
    )
  said.push(now.theFactor.ok ? looksWords(plan) : '')
  return said.filter(Boolean).join(' ')
}

/** Where findings are looked at early: that all of this already allows for it. */
function looksWords(plan: AskedPlan): string {
  const most = looksOf(plan)?.most ?? 0
  // Two sessions leave no look before the last that could end them.
  if (most <= 2) return ''
  const when =
    plan.plannedSessions < most
      ? `After ${plan.plannedSessions} of at most ${most} sessions`
      : 'Looked at after each session from the second on,'
  return `${when} an answer has to be clearer than usual; this reckons with it.`
}

function about(rung: DetectableRung, what: string, asked: AskedOfPlan = 'pair'): string {
  const start = asSentenceStart(what)
  if (!rung.ok) return `${start} nothing can be said: that ${needs[rung.reason]}.`
  const kinds = {
    rise: {
      size: rung.riseShows,
      words: 'a change of about SIZE points from the first to the last level',
    },
    hump: {
      size: rung.humpShows,
      words: 'a best in between that stands about SIZE points above both ends',
    },
    pair: { size: rung.wouldShow, words: 'a true difference of about SIZE points' },
  }
  const { size, words } = kinds[asked]
  const shows = size ?? rung.wouldShow
  return shows > most
    ? `${start} ${asked === 'pair' ? 'no difference' : 'nothing'} would show for sure: it would take more than the ${most} points between 1 and 9.`
    : `${start} ${(size === null ? kinds.pair.words : words).replace('SIZE', decimalText(shows, 1))} would show.`
}

/** How likely the plan is to end with an easy level that is as good as the best, and what would make it 8 in 10. */
function endingWords(
  rung: DetectableRung,
  margin: number | null,
  of: 'sessions' | 'tasters',
): string {
  if (!rung.ok || rung.ending === null || margin === null) return ''
  const { named, notNamed } = rung.ending
  const share = (chance: number) => decimalText(chance * 100, 0)
  const enough = (count: number | null) =>
    count === null ? `no number of ${of} within reason` : `${count} ${of}`
  const more =
    named.chance >= 0.8
      ? ''
      : `; ${enough(named.enough)} would make it 80 (${enough(notNamed.enough)} if not named)`
  return `That an easy level is as good as the best, within your margin of ${plainNumber(margin)}, would be shown in ${share(named.chance)} of 100 such trials where that is so and the level is named before the mix, in ${share(notNamed.chance)} where it is not named${more}.`
}

/** Points that would show; none beyond what the scale holds. */
function pointsText(points: number): string {
  return points > most ? `over ${most}` : decimalText(points, 1)
}

/** The plan and each single step away from it, with the difference that would show by rung: head first. */
export function detectTable(help: WhatWouldHelp): { head: string[]; rows: string[][] } {
  const cell = (rung: DetectableRung) => (rung.ok ? pointsText(rung.wouldShow) : needs[rung.reason])
  return {
    head: ['Would show, in points', 'These pieces', 'These doughs', 'The factor'],
    rows: detectSteps(help).map(([name, design]) => [
      name,
      cell(design.thesePieces),
      cell(design.theseDoughs),
      cell(design.theFactor),
    ]),
  }
}

/**
 * What each question of the verdict would show, in points, and how often it can end with an easy level that is as good: of the factor, or of
 * these pieces where one session cannot speak of it.
 */
export function detectByQuestion(help: WhatWouldHelp): { head: string[]; rows: string[][] } {
  const which = help.now.theFactor.ok ? 'theFactor' : 'thesePieces'
  const size = (points: number | null) => (points === null ? '–' : pointsText(points))
  const chance = (ending: { chance: number } | undefined) =>
    ending ? `${decimalText(ending.chance * 100, 0)} %` : '–'
  return {
    head: [
      which === 'theFactor' ? 'Of the factor' : 'Of these pieces',
      'Rise or fall',
      'In between',
      'Any pair',
      'Ending named',
      'not named',
    ],
    rows: detectSteps(help).map(([name, design]) => {
      const rung = design[which]
      if (!rung.ok) return [name, needs[rung.reason], '', '', '', '']
      const { riseShows, humpShows, wouldShow, ending } = rung
      return [
        name,
        ...[riseShows, humpShows, wouldShow].map(size),
        chance(ending?.named),
        chance(ending?.notNamed),
      ]
    }),
  }
}

/** What the columns of that table are. */
export const detectByQuestionSays =
  'Rise or fall: the last level against the first. In between: a best over both ends. Ending: how often an easy level is shown to be as good as the best within your margin where that is so, named before the mix or not.'

/** The plan as it is and each single step away from it, by what the step is called. */
function detectSteps(help: WhatWouldHelp) {
  const steps = [
    ['As planned', help.now],
    ['Another session', help.anotherSession],
    ['Two more tasters', help.twoMoreTasters],
    ['One level less', help.oneLevelLess],
  ] as const
  return steps.flatMap(([name, design]) => (design ? [[name, design] as const] : []))
}

/** Said in place of numbers where the main response is on no nine-point scale, or there is none. */
export function detectRefusal(plan: AskedPlan): string | null {
  const main = plan.responses.find(({ id }) => id === plan.mainResponseId)
  if (!main) return 'Choose the main response first: what could be detected is about it.'
  if (main.scale.kind === 'nine-point' && main.by === 'taster') return null
  return `How far answers scatter is known for tasters on nine-point scales only. For ${main.name} the first sessions will tell.`
}
