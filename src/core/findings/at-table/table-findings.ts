import { sealed } from '@/core/seal/sealed.ts'
import type { Session } from '@/core/session/session-record.ts'
import { binomialAtLeast } from '@/core/statistics/distributions/binomial.ts'
import { tTwoSidedP } from '@/core/statistics/distributions/students-t.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { type GuessAsked, guessAsked } from '@/core/tasting/guess-asked.ts'
import { asksLiking, tasterQuestions } from '@/core/tasting/taster-questions.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { observations } from '@/core/whole-trial/observations.ts'
import { planInForce, planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import { type LostSession, lostSessions, toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/** How one taster repeated what they said of the same piece under two codes. */
export interface Repeats {
  tasterId: string
  pairs: number
  /** Standard deviation of one answer, √(Σ d² / 2n) of the differences d within pairs (Dahlberg), in points. */
  sd: number
  /** Mean of the differences' sizes, in points. */
  meanApart: number
}

/** Whether what comes first is scored otherwise than the same level later. */
export interface FirstPosition {
  responseId: string
  /** First less later, in points: mean over tasters of what is first, freed from level means. */
  difference: number
  n: number
  p: number
}

/** How often the guess at the end found what it was asked for among the codes, against chance. */
export interface Blinding {
  /** The usual one, or that which had most of what was changed. */
  of: GuessAsked
  /** One person's guesses over several sessions: they speak of that person. */
  alone: boolean
  asked: number
  guessed: number
  found: number
  /** Of one guess, as the codes of the usual one are among all. */
  chance: number
  /** Chance of so many or more by luck, were all blind. */
  p: number
}

export interface TableFindings {
  ok: true
  responseId: string | null
  repeats: Repeats[]
  first: FirstPosition | null
  blinding: Blinding | null
  /** In how many sessions one person alone tasted; null where several did, or nobody. */
  aloneSessions: number | null
  /** Tasters who know which is which, left out of liking while another is blind. */
  knowing: string[]
  /** Sessions of which nobody can tell any more which dough was which: they stand in no finding. */
  lost: LostSession[]
}

/** Fewest first servings whose mean is compared. */
const fewestFirst = 4

/**
 * What the table says of itself: how tasters repeat (from servings under a second code), whether the first position is scored
 * otherwise, and whether blinding held (from the guess of the usual one). Of the first question tasters answer. Refused while
 * a session is sealed, unless the one who asks knows of the look.
 */
export function tableFindings(
  all: WholeTrial,
  { unsealed }: { unsealed: boolean },
): TableFindings | { ok: false; reason: 'still-sealed' } {
  if (!unsealed && sealed(all)) return { ok: false, reason: 'still-sealed' }
  const whole = toldTrial(all)
  const plan = planInForce(whole)
  const question = tasterQuestions(plan)[0]
  const liking = question !== undefined && asksLiking(question)
  return {
    ok: true,
    responseId: question?.id ?? null,
    repeats: question ? repeatsOf(whole, question.id) : [],
    first: question ? firstPosition(whole, question.id) : null,
    blinding: blindingOf(whole),
    aloneSessions: aloneSessionsOf(whole),
    knowing: liking ? plan.tasters.flatMap(({ tasterId, knows }) => (knows ? [tasterId] : [])) : [],
    lost: lostSessions(all),
  }
}

function repeatsOf(whole: WholeTrial, responseId: string): Repeats[] {
  const apart = new Map<string, number[]>()
  for (const session of whole.sessions) {
    const ballots = effectiveBallots(whole.ballots, session.id)
    for (const { id, repeats } of session.dealt.servings) {
      if (repeats === undefined) continue
      for (const again of ballots) {
        if (again.about.kind !== 'serving' || again.about.id !== id) continue
        const once = ballots.find(
          ({ tasterId, about }) => tasterId === again.tasterId && about.id === repeats,
        )
        const [one, two] = [once, again].map(
          (ballot) => ballot?.answers.find((each) => each.responseId === responseId)?.value ?? null,
        )
        if (one === null || two === null || one === undefined || two === undefined) continue
        apart.set(again.tasterId, [...(apart.get(again.tasterId) ?? []), two - one])
      }
    }
  }
  return [...apart].map(([tasterId, differences]) => {
    const squares = differences.reduce((sum, each) => sum + each * each, 0)
    const sizes = differences.reduce((sum, each) => sum + Math.abs(each), 0)
    const pairs = differences.length
    return { tasterId, pairs, sd: Math.sqrt(squares / (2 * pairs)), meanApart: sizes / pairs }
  })
}

/** Each score less its session's level mean and less what its taster gives above it; firsts against the rest, by their mean. */
function firstPosition(whole: WholeTrial, responseId: string): FirstPosition | null {
  const seen = observations(whole, { unsealed: true })
  if (!seen.ok) return null
  const rows = seen.rows.filter((row) => row.responseId === responseId && row.position !== null)
  const meanBy = (key: (row: (typeof rows)[number]) => string, value: (at: number) => number) => {
    const sums = new Map<string, { sum: number; n: number }>()
    for (const [at, row] of rows.entries()) {
      const { sum, n } = sums.get(key(row)) ?? { sum: 0, n: 0 }
      sums.set(key(row), { sum: sum + value(at), n: n + 1 })
    }
    return (row: (typeof rows)[number]) => {
      const own = sums.get(key(row))
      return own ? own.sum / own.n : 0
    }
  }
  const level = meanBy(
    ({ sessionId, levelId }) => `${sessionId} ${levelId}`,
    (at) => rows[at]?.value ?? 0,
  )
  const free = rows.map((row) => row.value - level(row))
  const own = meanBy(
    ({ tasterId }) => tasterId ?? '',
    (at) => free[at] ?? 0,
  )
  const left = rows.map((row, at) => (free[at] ?? 0) - own(row))
  const firsts = left.filter((_, at) => rows[at]?.position === 1)
  const later = left.filter((_, at) => rows[at]?.position !== 1)
  if (firsts.length < fewestFirst || later.length < fewestFirst) return null
  const difference = meanOf(firsts) - meanOf(later)
  const df = firsts.length + later.length - 2
  const spread = (squaresOf(firsts) + squaresOf(later)) / df
  const error = Math.sqrt(spread * (1 / firsts.length + 1 / later.length))
  if (!(error > 0)) return null
  return { responseId, difference, n: firsts.length, p: tTwoSidedP(difference / error, df) }
}

const meanOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length

function squaresOf(values: readonly number[]): number {
  const mean = meanOf(values)
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
}

/** The sessions in which the one person scored who ever did. */
function aloneSessionsOf(whole: WholeTrial): number | null {
  const ballots = effectiveBallots(whole.ballots)
  if (new Set(ballots.map(({ tasterId }) => tasterId)).size !== 1) return null
  return new Set(ballots.map(({ sessionId }) => sessionId)).size
}

/**
 * Guesses of blind tasters; with several sessions each taster's first alone counts, since one answer a person is independent. Of
 * a person who tastes alone every session counts: then they speak of that person. The chance is that of the first session.
 */
function blindingOf(whole: WholeTrial): Blinding | null {
  const guesses = new Map<string, boolean | null>()
  const alone = aloneSessionsOf(whole) !== null
  let asked: { of: GuessAsked; chance: number } | null = null
  for (const session of whole.sessions.toSorted((one, other) => one.number - other.number)) {
    const plan = planOfSession(whole, session)
    const of = guessAsked(plan)
    const wanted = of === null ? undefined : levelGuessed(plan, of)
    if (of === null || wanted === undefined || (asked && asked.of !== of)) continue
    const codes = codesOfLevel(session, wanted)
    asked ??= { of, chance: codes.own.length / Math.max(1, codes.all) }
    const knowing = new Set(
      plan.tasters.flatMap(({ tasterId, knows }) => (knows ? [tasterId] : [])),
    )
    for (const { tasterId, about, pickedCode } of effectiveBallots(whole.ballots, session.id)) {
      const key = alone ? `${tasterId} ${session.id}` : tasterId
      if (about.kind !== 'session' || guesses.has(key) || knowing.has(tasterId)) continue
      guesses.set(key, pickedCode === undefined ? null : codes.own.includes(pickedCode))
    }
  }
  if (guesses.size === 0 || !asked) return null
  const made = [...guesses.values()].filter((found) => found !== null)
  const found = made.filter(Boolean).length
  const p = made.length === 0 ? 1 : binomialAtLeast(found, made.length, asked.chance)
  return { ...asked, alone, asked: guesses.size, guessed: made.length, found, p }
}

/** The level a guess looks for: the usual one, or the highest of a factor in order. */
function levelGuessed({ levels }: Plan, of: GuessAsked): string | undefined {
  if (of === 'usual') return levels.find(({ control }) => control)?.id
  return levels.toSorted((one, other) => (other.value ?? 0) - (one.value ?? 0))[0]?.id
}

function codesOfLevel({ pieces, dealt }: Session, levelId: string) {
  const counted = dealt.servings.filter(({ flightId }) => flightId !== null)
  const own = counted.filter(
    ({ pieceId }) => pieces.find(({ id }) => id === pieceId)?.levelId === levelId,
  )
  return { own: own.map(({ code }) => code), all: counted.length }
}
