import { effectRates } from '@/core/fairness/effect/effect-rates.ts'
import type { FairnessCode } from '@/core/fairness/fairness-data.ts'
import { thresholds } from '@/core/fairness/thresholds.ts'
import { plainNumber } from '@/core/units/number-text.ts'
import { effectRateText } from './effect-text.ts'
import { fairnessTitles } from './fairness-titles.ts'
import { thresholdSourceText } from './threshold-sources.ts'

const sizeText = (size: number | null) => (size === null ? '–' : plainNumber(size))

/** The sizes behind the fairness check as a table in Markdown, each with where it comes from and what it is taken to do to the answer. */
export function thresholdsTable(): string {
  const codes = Object.keys(thresholds) as FairnessCode[]
  const rows = codes.map((code) => {
    const { unit, know, fix, practice } = thresholds[code]
    const standing = thresholdSourceText(code, practice, '_')
    return `| ${fairnessTitles[code]} | ${unit} | ${sizeText(know)} | ${sizeText(fix)} | ${effectRateText(effectRates[code])} | ${standing} |`
  })
  const head = [
    '| item | unit | know from | fix from | points of liking | where the sizes come from |',
  ]
  return [...head, '| --- | --- | ---: | ---: | ---: | --- |', ...rows].join('\n')
}
