import { expect, test } from 'vitest'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { namingOf } from '@/core/wording/findings/answer-of-rung.ts'
import { bakeNowSentence } from '@/core/wording/findings/bake-now.ts'
import { spokenOf } from '@/core/wording/findings/headline.ts'
import { sampleTrial } from '../../cli/sample-file.ts'

test.each(['focaccia-hydration', 'pan-loaf-salt', 'flatbread-hydration'])(
  '%s: whatever the verdict, one sentence says what to bake',
  (name) => {
    const answer = trialFindings(sampleTrial(name), { unsealed: true, resamples: null })
    if (!answer.ok) throw new Error('sealed')
    const [main] = answer.document.responses
    if (!main) throw new Error('no response')
    const naming = namingOf(answer.document, answer.scores.responses[0])
    expect(bakeNowSentence(spokenOf(main, naming), '62 %')).toMatch(/^On Saturday bake .+\.$/)
  },
)
