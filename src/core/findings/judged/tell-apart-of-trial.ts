import type { LevelId } from '@/core/findings/rungs/rung-shape.ts'
import type { TrialLevels } from '@/core/findings/table/levels-of-trial.ts'
import type { TellApartCount } from '@/core/findings/table/score-table.ts'
import { effectiveBallots } from '@/core/tasting/effective-ballots.ts'
import { planOfSession } from '@/core/whole-trial/plan-in-force.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'

/**
 * Tell-apart tests of a trial, counted over tasters and sessions: one answer for each set with a picked code, right when it
 * is the odd or matching one; and by person. Tests of the same kind and levels are one.
 */
export function tellApartOfTrial(whole: WholeTrial, levels: TrialLevels): TellApartCount[] {
  const counts = new Map<string, Counted>()
  for (const session of whole.sessions) {
    const asked = planOfSession(whole, session).tellApart
    const [a, b] = (asked?.levelIds ?? [])
      .map((id) => levels.indexOf(id, session.id))
      .toSorted((one, other) => one - other)
    if (!asked || a === undefined || b === undefined || a < 0) continue
    const between: [LevelId, LevelId] = [idAt(levels, a), idAt(levels, b)]
    const key = `${asked.test} ${a} ${b}`
    const count = counts.get(key) ?? begun(asked.test, between)
    counts.set(key, count)
    const ballots = effectiveBallots(whole.ballots, session.id)
    for (const set of session.dealt.sets) {
      const ballot = ballots.find(
        ({ about, pickedCode }) =>
          about.kind === 'set' && about.id === set.id && pickedCode !== undefined,
      )
      if (!ballot) continue
      const right = ballot.pickedCode === set.answerCode
      count.answers.push({ tasterId: ballot.tasterId, sessionId: session.id, right })
    }
  }
  return [...counts.values()].map(countOf)
}

interface Counted extends Pick<TellApartCount, 'test' | 'between'> {
  answers: { tasterId: string; sessionId: string; right: boolean }[]
}

const begun = (test: Counted['test'], between: Counted['between']): Counted => ({
  ...{ test, between, answers: [] },
})

function countOf({ test, between, answers }: Counted): TellApartCount {
  const right = (of: Counted['answers']) => of.filter((answer) => answer.right).length
  const people = [...new Set(answers.map(({ tasterId }) => tasterId))].map((tasterId) => {
    const own = answers.filter((answer) => answer.tasterId === tasterId)
    return right(own) / own.length
  })
  const sessions = new Set(answers.map(({ sessionId }) => sessionId)).size
  return { test, between, n: answers.length, correct: right(answers), people, sessions }
}

function idAt(levels: TrialLevels, index: number): LevelId {
  const level = levels.list[index]
  if (!level) throw new RangeError(`the trial has no level ${index}`)
  return level.id
}
