import type { FoundRanking } from '@/core/findings/findings-document.ts'
import { isPresent } from '@/core/findings/reason.ts'
import { decimalText, plainNumber, probabilityText } from '@/core/units/number-text.ts'
import { rankingQuestion } from '@/core/wording/tasting/ranking-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { type LevelNaming, levelInWords } from './named-in-findings.ts'
import { reasonText } from './reason-text.ts'

/** In what order blind tasters put the samples, whether they agree more than by chance, and of what it speaks. */
export function rankingSentence(found: FoundRanking, naming: LevelNaming): string {
  if (found.levels.length === 0)
    return `${askedText(found)} no order counts. ${leftOutText(found)}`.trim()
  const { tasters, sessions, levels, ranks } = found
  const placed = levels.toSorted((one, other) => one.place - other.place)
  const [front, ...behind] = placed.map(
    ({ level, place }) => `${levelInWords(level, naming)} (${decimalText(place, 1)})`,
  )
  const over = sessions > 1 ? ` in ${countText(sessions, 'session')}` : ''
  const order = `${askedText(found)} on the mean of ${countText(tasters, 'taster')}${over} ${front} stands first, then ${listText(behind)}; in brackets the mean place of ${levels.length}.`
  const agreed = isPresent(ranks)
    ? ranks.p < 0.05
      ? `They agree more than chance would have it (p ${probabilityText(ranks.p)}).`
      : `They agree no more than chance might have it (p ${probabilityText(ranks.p)}): the order is not settled.`
    : reasonText(ranks)
  const pieces =
    sessions > 1
      ? `It speaks of the pieces of ${countText(sessions, 'session')}.`
      : 'It speaks of these pieces, and not yet of the levels.'
  return [order, agreed, apartText(found, naming), pieces, leftOutText(found)]
    .filter(Boolean)
    .join(' ')
}

/** The numbers behind it, for whoever checks them: nothing where the test could not be made. */
export function rankingFigures({ ranks }: FoundRanking, naming: LevelNaming): string[] {
  if (!isPresent(ranks)) return []
  const { chiSquare, df, p, kendallW, rankSums, leastDifference } = ranks
  const sums = rankSums.map(
    ({ level, sum }) =>
      `${levelInWords(level, naming)} ${plainNumber(Math.round(sum * 100) / 100)}`,
  )
  return [
    `Friedman’s chi-square ${decimalText(chiSquare, 2)} with ${countText(df, 'degree')} of freedom, p ${probabilityText(p)}; Kendall’s W ${decimalText(kendallW, 2)} of 1.`,
    `Rank sums (small is early): ${sums.join(', ')}. ${
      isPresent(leastDifference)
        ? `Two levels differ where their sums are ${decimalText(leastDifference, 1)} or more apart.`
        : `Which differ: ${reasonText(leastDifference)}`
    }`,
  ]
}

const askedText = ({ asks }: FoundRanking) =>
  `Asked “${rankingQuestion(asks === null ? {} : { asks })}”,`

function apartText({ ranks }: FoundRanking, naming: LevelNaming): string {
  if (!isPresent(ranks) || !isPresent(ranks.leastDifference)) return ''
  const least = ranks.leastDifference
  const { rankSums } = ranks
  const pairs = rankSums.flatMap((one, at) =>
    rankSums
      .slice(at + 1)
      .filter((other) => Math.abs(one.sum - other.sum) >= least)
      .map(
        (other) => `${levelInWords(one.level, naming)} from ${levelInWords(other.level, naming)}`,
      ),
  )
  return pairs.length === 0
    ? 'Which of them differ it cannot say.'
    : `It sets apart ${listText(pairs)}.`
}

function leftOutText({ leftOut, knowing }: FoundRanking): string {
  return [
    leftOut > 0
      ? `${asSentenceStart(countText(leftOut, 'order'))} left out, since not every level was in it.`
      : '',
    knowing > 0
      ? `${asSentenceStart(countText(knowing, 'order'))} left out of who knew which was which.`
      : '',
  ]
    .filter(Boolean)
    .join(' ')
}
