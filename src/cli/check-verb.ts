import { sealed } from '@/core/seal/sealed.ts'
import { planProblems } from '@/core/trial/plan-problems.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { type Stage, stageOf } from '@/core/whole-trial/stage.ts'
import { planPlaceText } from '@/core/wording/plan/plan-place-text.ts'
import { planProblemText } from '@/core/wording/plan/plan-problem-text.ts'
import { countText } from '@/core/wording/words/list-text.ts'
import { placed } from './plan-stops.ts'
import { readTrial } from './read-trial.ts'
import { jsonOption, type Verb } from './verb.ts'
import { wrapped } from './wrapped.ts'

const stands: Record<Stage, string> = {
  planning: 'in planning',
  working: 'at the bench',
  tasting: 'being tasted under cover',
  sealed: 'tasted and still under cover',
  between: 'between two sessions',
  answered: 'answered',
}

/** Reads a trial file whole and says what it holds; a broken one is refused with every trouble placed. */
export const checkVerb: Verb = {
  summary: 'read a trial file and say whether it is whole',
  about:
    'Checks shape, version and references. Bad JSON is placed by line and column, a bad shape by JSON Pointer.',
  options: { json: jsonOption },
  answer: async ({ file, flag }) => {
    const whole = readTrial(file)
    const covered = sealed(whole)
    const plan = planInForce(whole)
    const counts = {
      levels: plan.levels.length,
      sessions: whole.sessions.length,
      events: whole.events.length,
      ballots: whole.ballots.length,
    }
    const problems = covered ? [] : planProblems(plan, whole.kitchen)
    if (flag('json')) {
      const facts = { ok: true, stage: stageOf(whole), sealed: covered, ...counts, problems }
      return JSON.stringify(facts, null, 2)
    }
    const said = Object.entries(counts).map(([name, count]) => countText(count, name.slice(0, -1)))
    return [
      `${file}: a whole trial file, ${stands[stageOf(whole)]}.`,
      covered ? 'Its tasting is sealed.' : plan.question,
      said.join(', '),
      ...problems.map((problem) =>
        wrapped(placed(planPlaceText(problem.path, plan), planProblemText(problem)), '- '),
      ),
    ].join('\n')
  },
}
