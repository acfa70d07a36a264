import type { FairnessItem } from '@/core/fairness/fairness-item.ts'
import type { Blinding } from '@/core/findings/at-table/table-findings.ts'
import type { FindingsDocument } from '@/core/findings/findings-document.ts'
import type { LevelEase, ScoreTable } from '@/core/findings/table/score-table.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText } from '@/core/units/number-text.ts'
import { type FailureKind, failureText } from '@/core/wording/bench/failure-text.ts'
import { fairnessText } from '@/core/wording/fairness/fairness-text.ts'
import { asSentenceStart, countText, countWord, listText } from '@/core/wording/words/list-text.ts'
import { levelInShort } from './named-in-findings.ts'

/** One line of what was seen beside the scores, under a heading of its own. */
export interface SeenLine {
  title: string
  text: string
}

/** What one evening yields beside an order of liking. */
export interface Seen {
  ease: ScoreTable['ease']
  /** How pieces failed, by the level's id; each kind once. */
  kinds: ReadonlyMap<string, readonly FailureKind[]>
  /** What rode along with the level on the day, the largest first. */
  riders: readonly FairnessItem[]
  blinding: Blinding | null
}

/** Handling, failures, what came along and the guess at the end, as far as they were recorded. */
export function whatWasSeen(
  { ease, kinds, riders, blinding }: Seen,
  naming: Pick<FindingsDocument, 'levels' | 'factor'>,
  plan: Plan,
): SeenLine[] {
  return [
    { title: 'Handling', text: handlingText(ease ?? [], naming) },
    { title: 'Failed', text: failedText(ease ?? [], kinds, naming) },
    { title: 'Came along', text: ridersText(riders, plan) },
    ...(blinding ? [{ title: guessTitle(blinding, naming), text: guessText(blinding) }] : []),
  ].filter(({ text }) => text !== '')
}

/** "52 easy (8), 56 fair (6), 60 hard (3)": nine points in three thirds, as they are anchored at the bench (own convention). */
function handlingText(
  ease: readonly LevelEase[],
  naming: Pick<FindingsDocument, 'levels'>,
): string {
  return ease
    .flatMap(({ level, handling }) =>
      handling === null
        ? []
        : [`${levelInShort(level, naming)} ${easeWord(handling)} (${decimalText(handling, 0)})`],
    )
    .join(', ')
}

function easeWord(handling: number): string {
  if (handling >= 6.5) return 'easy'
  return handling >= 3.5 ? 'fair' : 'hard'
}

/** "one of two at 60: torn, rescued"; "none of six pieces" where all went well. */
function failedText(
  ease: readonly LevelEase[],
  kinds: Seen['kinds'],
  naming: Pick<FindingsDocument, 'levels'>,
): string {
  const pieces = ease.reduce((sum, each) => sum + each.pieces, 0)
  if (pieces === 0) return ''
  const failed = ease.filter(({ failures }) => failures > 0)
  if (failed.length === 0) return `none of ${countText(pieces, 'piece')}`
  return failed
    .map(({ level, failures, pieces: of }) => {
      const how = (kinds.get(level) ?? []).map(failureText)
      const counted = `${countWord(failures)} of ${countWord(of)} at ${levelInShort(level, naming)}`
      return how.length === 0 ? counted : `${counted}: ${listText(how)}`
    })
    .join('; ')
}

/** The two largest riders in a sentence each, and how many more. */
function ridersText(riders: readonly FairnessItem[], plan: Plan): string {
  const said = riders.slice(0, 2).map((item) => asSentenceStart(fairnessText(item, plan).sentence))
  const more = riders.length - said.length
  return [...said, more > 0 ? `And ${countWord(more)} more.` : ''].filter(Boolean).join(' ')
}

function guessTitle({ of }: Blinding, { factor }: Pick<FindingsDocument, 'factor'>): string {
  if (of === 'usual') return 'You guessed the usual one'
  if (factor.kind === 'hydration') return 'You guessed the wettest'
  return factor.kind === 'salt' ? 'You guessed the saltiest' : 'You guessed the one with most'
}

function guessText({ guessed, found }: Blinding): string {
  if (guessed === 0) return 'no idea, so far as you say'
  return found > 0
    ? 'right, before the codes were opened: your score may know it'
    : 'another one: no sign that your hands told you'
}
