import { isPresent } from '@/core/findings/reason.ts'
import type { ResponseFindings } from '@/core/findings/response-findings-shape.ts'
import type { FoundScores } from '@/core/report/found-scores.ts'
import type { ReportBlock, ReportSection, TableBlock } from '@/core/report/report-block.ts'
import { chartBlock } from '@/core/report/result-pictures.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { shownRung } from '@/core/wording/findings/answer-of-rung.ts'
import { intervalText, tableDecimals } from '@/core/wording/findings/difference-text.ts'
import { levelInWords } from '@/core/wording/findings/named-in-findings.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'

/** The main response in one chart, and each level in a row: mean, interval, what it cost, whether it is as good as the best. */
export function foundSection(found: FoundScores): ReportSection[] {
  const [main] = found.findings.responses
  if (!main || main.n === 0) return []
  const { factor } = found.findings
  const chart = chartBlock(found, main, 0, shownRung(main))
  const blocks: ReportBlock[] = [chart, levelsInShort(found, main)]
  return [
    {
      id: 'page-found',
      title: `${main.name} by ${midSentence(factor.name)}`,
      blocks,
    },
  ]
}

function levelsInShort({ scores }: FoundScores, main: ResponseFindings): TableBlock {
  const rung = shownRung(main)
  const answer = rung === null ? null : main[rung]
  const means = answer !== null && isPresent(answer) ? answer.means : []
  const decimals = tableDecimals(means)
  const { asGood, usual } = main.conclusion
  const ease = (levelId: string) => scores.ease?.find(({ level }) => level === levelId)
  const handled = scores.ease?.some(({ handling }) => handling !== null) ?? false
  const rows = main.levels.map((level) => {
    const { level: id } = level
    const mean = means.find((each) => each.level === id)
    const plain = isPresent(level.mean) ? decimalText(level.mean, 2) : '–'
    const judged = isPresent(asGood) ? asGood.levels.find((each) => each.level === id) : undefined
    const handling = ease(id)?.handling
    return [
      `${levelInWords(id, scores)}${id === usual ? ', usual' : ''}`,
      mean ? decimalText(mean.estimate, decimals) : plain,
      mean ? intervalText(mean.low, mean.high, decimals) : '–',
      ...(handled ? [handling == null ? '–' : decimalText(handling, 1)] : []),
      String(ease(id)?.failures ?? 0),
      ...(isPresent(asGood) ? [asGoodWord(judged, id === asGood.best)] : []),
    ]
  })
  return {
    kind: 'table',
    caption: means.length > 0 ? 'Means with 95 % intervals' : 'Means of all values',
    head: [
      ...['Level', 'Mean', '95 %'],
      ...(handled ? ['Handling, 9 is easiest'] : []),
      'Failed',
      ...(isPresent(asGood) ? ['As good as the best'] : []),
    ],
    rows,
    figures: [
      ...[false, true, true],
      ...(handled ? [true] : []),
      true,
      ...(isPresent(asGood) ? [true] : []),
    ],
  }
}

function asGoodWord(judged: { passes: boolean } | undefined, best: boolean): string {
  const passes = judged?.passes === true
  if (best) return passes ? 'stands highest' : 'highest, not shown'
  return passes ? 'yes' : 'not shown'
}
