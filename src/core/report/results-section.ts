import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import { agreementSentence } from '@/core/wording/findings/agreement-sentence.ts'
import { namingOf, shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { asGoodFigures } from '@/core/wording/findings/as-good-figures.ts'
import { asHandledSentence } from '@/core/wording/findings/as-handled-sentence.ts'
import { besideSentence } from '@/core/wording/findings/beside-sentence.ts'
import { bestFigures } from '@/core/wording/findings/best-figures.ts'
import { endingSentence } from '@/core/wording/findings/ending-sentence.ts'
import { spokenOf } from '@/core/wording/findings/headline.ts'
import { justAboutRightText } from '@/core/wording/findings/just-about-right-text.ts'
import { responseInWords } from '@/core/wording/findings/named-in-findings.ts'
import { placeSentence } from '@/core/wording/findings/place-sentence.ts'
import { rankFigures } from '@/core/wording/findings/rank-figures.ts'
import { rankingFigures, rankingSentence } from '@/core/wording/findings/ranking-sentence.ts'
import { reasonText } from '@/core/wording/findings/reason-text.ts'
import { rungTitle } from '@/core/wording/findings/rung-text.ts'
import { tellApartSentence } from '@/core/wording/findings/tell-apart-sentence.ts'
import { trendSentence } from '@/core/wording/findings/trend-sentence.ts'
import type { FoundScores } from './found-scores.ts'
import type { ReportBlock, ReportSection } from './report-block.ts'
import { chartBlock, pairsBlock } from './result-pictures.ts'
import {
  againstControlTable,
  levelsTable,
  meansTable,
  pairsTable,
  rungsTable,
} from './result-tables.ts'

/** One section a response: the picture, what happened, the rungs, which differ, where the best lies. */
export function resultSections(found: FoundScores): ReportSection[] {
  const sections: ReportSection[] = found.findings.responses.map((response, index) => ({
    id: `result-${index + 1}`,
    title: index === 0 ? `Result: ${response.name}` : `Also seen: ${response.name}`,
    blocks: responseBlocks(found, response, index),
  }))
  const { discrimination, rankings = [] } = found.findings
  if (rankings.length > 0)
    sections.push({
      id: 'ranked',
      title: 'In what order were they put?',
      blocks: rankings.map((ranking) => ({
        kind: 'list',
        items: [
          rankingSentence(ranking, found.findings),
          ...rankingFigures(ranking, found.findings),
        ],
      })),
    })
  if (discrimination.length === 0) return sections
  const items = discrimination.map((test) => tellApartSentence(test, found.findings))
  return [
    ...sections,
    { id: 'tell-apart', title: 'Can people tell them apart?', blocks: [{ kind: 'list', items }] },
  ]
}

function responseBlocks(
  found: FoundScores,
  response: ResponseFindings,
  index: number,
): ReportBlock[] {
  if (response.n === 0) return [{ kind: 'text', text: reasonText({ reason: 'no-scores' }) }]
  const rung = shownRung(response)
  const blocks: ReportBlock[] = [chartBlock(found, response, index, rung)]
  blocks.push(levelsTable(response, found.scores))
  blocks.push(rungsTable(response, found))
  const answer = rung === null ? null : response[rung]
  if (rung === null || answer === null || !isPresent(answer)) {
    blocks.push({
      kind: 'text',
      text: reasonText(isPresent(response.factor) ? { reason: 'no-scores' } : response.factor),
    })
    return blocks
  }
  blocks.push({ kind: 'heading', text: `${rungTitle(rung)}: means and pairs` })
  blocks.push(
    meansTable(answer, found.scores),
    pairsBlock(found, response, index, answer),
    pairsTable(answer, found.scores),
  )
  if (isPresent(answer.againstControl))
    blocks.push(againstControlTable(answer.againstControl, found.scores))
  blocks.push({ kind: 'list', items: saidOf(found, response, index, answer) })
  blocks.push({ kind: 'heading', text: 'The curve and the ranks, in numbers' })
  blocks.push({ kind: 'list', items: figuresOf(found, response, answer) })
  return [...blocks, ...tooMuchBlocks(found, response)]
}

/** Shares of too little, right and too much, and what each side cost this response. */
function tooMuchBlocks(
  { findings }: FoundScores,
  { justAboutRight, name }: ResponseFindings,
): ReportBlock[] {
  if (justAboutRight.length === 0) return []
  return [
    { kind: 'heading', text: 'Too much or too little' },
    {
      kind: 'list',
      items: justAboutRight.map((each) =>
        justAboutRightText(each, responseInWords(each.responseId, findings), name),
      ),
    },
  ]
}

/** The numbers behind the words, for whoever checks them. */
function figuresOf(
  { scores }: FoundScores,
  { ranks, conclusion }: ResponseFindings,
  { best }: Exclude<ResponseFindings['factor'], { reason: string }>,
): string[] {
  const unit = scores.factor.unitOfMeasure
  const levels = scores.levels.map((level) => level.name)
  return [
    ...bestFigures(best, levels, unit),
    ...rankFigures(ranks, scores),
    ...asGoodFigures(conclusion.asGood, scores),
  ]
}

function saidOf(
  found: FoundScores,
  response: ResponseFindings,
  index: number,
  answer: Exclude<ResponseFindings['factor'], { reason: string }>,
): string[] {
  const { scores, findings } = found
  const naming = namingOf(findings, scores.responses[index])
  const spoken = spokenOf(response, naming)
  const levels = scores.levels.map((level) => level.name)
  const said = scores.factor.ordered ? [trendSentence(answer.trend, response.name, naming)] : []
  const better = scores.responses[index]?.better.is ?? 'neither'
  const best = isPresent(answer.best) ? answer.best : null
  if (better !== 'neither' && scores.factor.ordered)
    said.push(
      [
        placeSentence(spoken, best),
        best
          ? asHandledSentence(response.conclusion, best, levels, naming.factor.unitOfMeasure)
          : '',
      ]
        .filter(Boolean)
        .join(' '),
    )
  if (index === 0) said.push(endingSentence(spoken, scores))
  said.push(
    besideSentence(response.conclusion.freshness, 'freshness'),
    besideSentence(response.conclusion.order, 'order'),
  )
  const agreed = agreementSentence(response, findings, better)
  return agreed === '' ? said : [...said, agreed]
}
