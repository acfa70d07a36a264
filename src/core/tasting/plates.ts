import type { Turned } from '@/core/session/event-record.ts'
import { letterOfLevel } from '@/core/session/line.ts'
import type { Serving, Session } from '@/core/session/session-record.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { inTwoGoes, onShuffledPlates } from '@/core/trial/served-at-table.ts'

/** Samples that are plated together, shuffled, and tasted one after another: a flight, a second go of it, or a set to tell apart. */
export interface PlateRound {
  /** From 1, in the order of tasting. */
  number: number
  /** The set that is told apart; null for a round of servings. */
  setId: string | null
  /** By the place they stand in; `key` names what the ballot is about. */
  plates: { key: string; plate: number }[]
  /** The letters that lie under them, rising; one that is plated twice stands twice. */
  letters: string[]
}

/**
 * The rounds of one taster who plates for themselves. `served` are the servings that really come to them, in order. Which plate
 * holds what is unknown until they are turned: a serving is its plate, and what it holds a place-holder. Empty where no plates
 * are shuffled.
 */
export function plateRounds(
  plan: Plan,
  session: Session,
  tasterId: string,
  served: readonly Serving[],
): PlateRound[] {
  if (!onShuffledPlates(plan)) return []
  const goes = inTwoGoes(plan)
  const groups = new Map<string, Serving[]>()
  for (const serving of served) {
    const key = `${serving.flightId} ${goes && serving.repeats !== undefined}`
    groups.set(key, [...(groups.get(key) ?? []), serving])
  }
  const letterOf = (levelId: string | undefined) =>
    levelId === undefined ? '' : (letterOfLevel(session, levelId) ?? '')
  const ofServings = [...groups.values()].map((group) => ({
    setId: null,
    plates: group.map(({ id }, at) => ({ key: id, plate: at + 1 })),
    letters: group
      .map(({ pieceId }) => letterOf(session.pieces.find(({ id }) => id === pieceId)?.levelId))
      .toSorted(),
  }))
  const ofSets = session.dealt.sets
    .filter((set) => set.tasterId === tasterId)
    .map(({ id, samples }) => ({
      setId: id,
      plates: samples.map(({ code }, at) => ({ key: code, plate: at + 1 })),
      letters: samples.map(({ levelId }) => letterOf(levelId)).toSorted(),
    }))
  return [...ofServings, ...ofSets].map((round, at) => ({ number: at + 1, ...round }))
}

/** Which letter was found under which plate, by the plate's key. */
export type Found = Readonly<Record<string, string>>

/** What was found, with the last plate of a round filled in: no other letter is left for it. */
export function withTheLast(rounds: readonly PlateRound[], found: Found): Found {
  const all: Record<string, string> = { ...found }
  for (const round of rounds) {
    const open = round.plates.filter(({ key }) => all[key] === undefined)
    const left = lettersLeft(round, all)
    const [plate] = open
    const [letter] = left
    if (open.length === 1 && left.length === 1 && plate && letter) all[plate.key] = letter
  }
  return all
}

/** The letters of a round that lie under no plate yet. */
export function lettersLeft({ plates, letters }: PlateRound, found: Found): string[] {
  const left = [...letters]
  for (const { key } of plates) {
    const at = left.indexOf(found[key] ?? '')
    if (at >= 0) left.splice(at, 1)
  }
  return left
}

/**
 * What the record says of turned plates: under each serving the piece of the letter that was found, under each sample of a set
 * its level. Null while a plate is still unturned or a letter was said oftener than it was plated.
 */
export function turnedPlates(
  session: Session,
  rounds: readonly PlateRound[],
  found: Found,
): Pick<Turned, 'plates' | 'samples'> | null {
  const plates: NonNullable<Turned['plates']> = []
  const samples: NonNullable<Turned['samples']> = []
  const levelOf = (letter: string) =>
    session.dealt.letters.find((each) => each.letter === letter)?.levelId
  for (const round of rounds) {
    if (lettersLeft(round, found).length > 0) return null
    const pieceIds = round.plates.flatMap(
      ({ key }) => session.dealt.servings.find(({ id }) => id === key)?.pieceId ?? [],
    )
    for (const { key } of round.plates) {
      const levelId = levelOf(found[key] ?? '')
      if (levelId === undefined) return null
      if (round.setId !== null) {
        samples.push({ setId: round.setId, code: key, levelId })
        continue
      }
      const at = pieceIds.findIndex(
        (pieceId) => session.pieces.find(({ id }) => id === pieceId)?.levelId === levelId,
      )
      const [pieceId] = at < 0 ? [] : pieceIds.splice(at, 1)
      if (pieceId === undefined) return null
      plates.push({ servingId: key, pieceId })
    }
  }
  return {
    ...(plates.length > 0 ? { plates } : {}),
    ...(samples.length > 0 ? { samples } : {}),
  }
}
