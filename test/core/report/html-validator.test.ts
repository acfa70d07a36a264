import { readFileSync } from 'node:fs'
import { HtmlValidate } from 'html-validate'
import { expect, test } from 'vitest'
import { nextSteps } from '@/core/findings/judged/next-steps.ts'
import { trialFindings } from '@/core/findings/trial-findings.ts'
import { reportDocument } from '@/core/report/report-document.ts'
import { reportHtml } from '@/core/report/report-html.ts'
import { civilTime } from '@/core/wording/words/civil-time.ts'
import { readTrialFile } from '@/trial-file/read-trial-file.ts'

/** The rules of the HTML standard and of accessible HTML, as an independent validator holds them. */
const validator = new HtmlValidate({
  extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'],
})

function reportOf(sample: string): string {
  const read = readTrialFile(
    readFileSync(new URL(`../../../trials/${sample}.json`, import.meta.url), 'utf8'),
  )
  if (!read.ok) throw new Error(`the sample ${sample} reads`)
  const found = trialFindings(read.whole, { unsealed: false, resamples: null })
  if (!found.ok) throw new Error('the sample is open')
  const made = reportDocument({
    ...{ whole: read.whole, scores: found.scores, findings: found.document },
    ...{ next: nextSteps(found.document, { toMend: 0 }), version: '0.1.0', clock: civilTime },
    unsealed: false,
  })
  if (!made.ok) throw new Error('the sample is open')
  return reportHtml(made.document)
}

test.each(['focaccia-hydration', 'pan-loaf-salt'])(
  'an independent validator finds no fault in the HTML of the report of %s, and finds one that is put there',
  async (sample) => {
    const html = reportOf(sample)
    const faults = async (text: string) => {
      const { results } = await validator.validateString(text)
      return results.flatMap(({ messages }) =>
        messages.map(
          ({ ruleId, message, line, column }) => `${line}:${column} ${ruleId}: ${message}`,
        ),
      )
    }
    expect(await faults(html)).toEqual([])
    expect((await faults(html.replace('</main>', '</div>'))).length).toBeGreaterThan(0)
  },
)
