import { pooledTrials } from '@/core/findings/pooled/pooled-trials.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { pooledRefusal, pooledText } from '@/core/wording/findings/pooled-text.ts'
import { readTrial } from './read-trial.ts'
import { textTable } from './text-table.ts'
import { CommandTrouble } from './trouble.ts'
import { jsonOption, unsealOption, type Verb } from './verb.ts'
import { wrapped } from './wrapped.ts'

/** Several trials of one factor, perhaps from several kitchens, as one answer. */
export const poolVerb: Verb = {
  summary: 'look at several trials of one factor together',
  about:
    'One model, each session of each trial a block of its own. Trials whose plans differ in anything but the factor are refused with the difference; flours, ovens and mixers are named.',
  options: { unseal: unsealOption, json: jsonOption },
  several: true,
  answer: async (asked) => {
    const trials = asked.files.map(readTrial)
    const answer = pooledTrials(trials, { unsealed: asked.flag('unseal') })
    if (!answer.ok) {
      const at = 'at' in answer ? (asked.files[answer.at] ?? '') : ''
      throw new CommandTrouble(pooledRefusal(answer, at, asked.files[0] ?? ''))
    }
    const { pooled } = answer
    if (asked.flag('json')) return JSON.stringify(pooled, null, 2)
    const { question } = planInForce(trials[0] ?? readTrial(asked.file))
    const { head, rows, sentences, ofTrials } = pooledText(pooled)
    const table =
      rows.length > 0
        ? [
            textTable(
              head,
              rows,
              head.map((_, at) => at > 0),
            ),
          ]
        : []
    return [
      question,
      ...sentences.slice(0, 1).map((one) => wrapped(one)),
      ...table,
      ...[...sentences.slice(1), ...ofTrials].map((one) => wrapped(one, '- ')),
    ].join('\n\n')
  },
}
