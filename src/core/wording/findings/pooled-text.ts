import type { PlanDifference } from '@/core/findings/pooled/formula-differences.ts'
import type { Pooled, PooledAnswer } from '@/core/findings/pooled/pooled-trials.ts'
import {
  decimalText,
  plainNumber,
  probabilityText,
  shortUnit,
  withUnit,
} from '@/core/units/number-text.ts'
import { asSentenceStart, countText, listText } from '@/core/wording/words/list-text.ts'
import { midSentence } from '@/core/wording/words/mid-sentence.ts'
import { reasonText } from './reason-text.ts'

/** A pooled answer in words: the sentence, a table of levels, and what stands beside it. */
export interface PooledText {
  sentences: string[]
  /** One for each trial: its question, its sessions and tasters, flours by bag and lot, oven and mixer. */
  ofTrials: string[]
  head: string[]
  rows: string[][]
}

/** What several trials say together; each session of each trial is a block of its own. */
export function pooledText(pooled: Pooled): PooledText {
  const { model, levels, trials, factorName } = pooled
  const unit = shortUnit(pooled.unitOfMeasure)
  const head = [
    `${asSentenceStart(factorName)}${unit === '' ? '' : `, ${unit}`}`,
    'mean',
    '95 % from',
    'to',
    'trials',
  ]
  const rows = model.levels.ok
    ? model.levels.means.map((mean) => {
        const level = levels[mean.level]
        const figures = [mean.estimate, mean.low, mean.high].map((one) => decimalText(one, 2))
        return [String(level?.name ?? ''), ...figures, String(level?.trials ?? '')]
      })
    : []
  return {
    head,
    rows,
    sentences: [
      mattersSentence(pooled),
      modelSentence(pooled),
      heterogeneitySentence(pooled),
      ...spreadSentence(pooled),
      ...slopeSentence(pooled),
      ...bestSentence(pooled),
    ],
    ofTrials: trials.map((one) => {
      const things = [listText(one.flours), one.oven, one.mixer].filter(Boolean).join('; ')
      return `“${one.question}”: ${countText(one.sessions, 'session')}, ${countText(one.tasters, 'taster')}; ${things}.`
    }),
  }
}

function mattersSentence({ model, factorName, responseName }: Pooled): string {
  const { levels } = model
  const what = `${midSentence(factorName)} moves ${midSentence(responseName)}`
  if (!levels.ok)
    return `Together they cannot compare all levels: ${reasonText({ reason: levels.reason })}`
  return levels.p < 0.05
    ? `Together they show that ${what}.`
    : `Together they do not settle whether ${what}.`
}

function modelSentence({ model: { levels }, responseName, trials }: Pooled): string {
  const sessions = trials.reduce((sum, one) => sum + one.sessions, 0)
  const made = `${asSentenceStart(countText(trials.length, 'trial'))} with ${countText(sessions, 'session')}: ${responseName} ~ session + level, each session of each trial a block of its own`
  if (!levels.ok) return `${made}.`
  return `${made}; F(${levels.df1}, ${levels.df2}) = ${decimalText(levels.f, 2)}, p ${levels.p < 0.001 ? '' : '= '}${probabilityText(levels.p)}.`
}

function heterogeneitySentence({ model }: Pooled): string {
  const { heterogeneity: het } = model
  if (!het.ok)
    return 'Whether the trials agree with each other cannot be told: with one session each, nothing is left to compare them by.'
  const figures = `F(${het.df1}, ${het.df2}) = ${decimalText(het.f, 2)}, p ${het.p < 0.001 ? '' : '= '}${probabilityText(het.p)}`
  return het.p < 0.05
    ? `The trials do not agree on what the levels do (${figures}): look at each for itself before this one answer.`
    : `The trials are not shown to disagree (${figures}); that is no proof that they agree.`
}

function spreadSentence({ model: { levels } }: Pooled): string[] {
  if (!levels.ok) return []
  return [
    `What is left between doughs of one level and session: a spread of ${decimalText(levels.residualSd, 2)} (standard deviation, ${levels.df2} degrees of freedom).`,
  ]
}

function slopeSentence({ model, unitOfMeasure }: Pooled): string[] {
  const { slope } = model
  if (!slope.ok) return []
  const per = shortUnit(unitOfMeasure) === '%' ? 'point' : unitOfMeasure || 'unit'
  const [at, low, high] = [slope.slope, slope.low, slope.high].map((one) => decimalText(one, 3))
  return [`A line through all: ${at} for each ${per} (95 % from ${low} to ${high}).`]
}

function bestSentence({ model, unitOfMeasure }: Pooled): string[] {
  const { best } = model
  if (!best.ok || !best.isTop) return []
  const said = (value: number) => withUnit(plainNumber(Math.round(value * 10) / 10), unitOfMeasure)
  const { fieller } = best
  const set =
    fieller.kind === 'interval'
      ? `95 % set from ${said(fieller.low)} to ${said(fieller.high)}`
      : 'no bounded 95 % set: more levels or sessions are needed'
  return [`If the hump is even, its top lies at ${said(best.vertex)} (${set}).`]
}

/** The same refusal on a screen, where trials are called by their questions; what differs stands in a list under it. */
export function pooledRefusalOnScreen(
  refused: Extract<PooledAnswer, { ok: false }>,
  question: string,
  first: string,
): { text: string; differences: string[] } {
  const told = (text: string, differences: string[] = []) => ({ text, differences })
  switch (refused.reason) {
    case 'one-trial':
      return told('Choose two trials or more.')
    case 'same-trial-twice':
      return told(
        'The same trial is there twice. Its sessions are one answer already: take one of the two away.',
      )
    case 'sealed':
      return told(
        `“${question}” is still sealed: it can be looked at together with others once its codes are given away.`,
      )
    case 'no-scores':
      return told(`In “${question}” nothing was scored that could be compared. Take it away.`)
    case 'differs':
      return told(
        `“${question}” is not the same trial but for the factor as “${first}”, so the two are no one answer. Take one of them away.`,
        refused.differences.map(differenceText),
      )
  }
}

/** Why trials are not looked at together, with what to do. `file` is the one in question, `first` what it was set against. */
export function pooledRefusal(
  refused: Extract<PooledAnswer, { ok: false }>,
  file: string,
  first: string,
): string {
  switch (refused.reason) {
    case 'one-trial':
      return 'pool: name two trial files or more.'
    case 'same-trial-twice':
      return 'pool: the same trial stands there twice. Its sessions are one answer already; name each once.'
    case 'sealed':
      return `${file}: still-sealed. A tasting is under way and this would give levels away. Unseal it in the app, or ask with --unseal; the file cannot record that look.`
    case 'no-scores':
      return `${file}: nothing was scored there that could be compared. Leave it out.`
    case 'differs':
      return [
        `${file}: this is not the same trial but for the factor as ${first}, so the two are no one answer:`,
        ...refused.differences.map((one) => `- ${differenceText(one)}`),
      ].join('\n')
  }
}

function differenceText(one: PlanDifference): string {
  const two = (here: number, there: number) =>
    `${plainNumber(Math.round(there * 100) / 100)} % of flour against ${plainNumber(Math.round(here * 100) / 100)} %`
  switch (one.what) {
    case 'factor':
      return `the factor: ${one.there} against ${one.here}.`
    case 'unit':
      return `the unit of the levels: ${one.there || 'none'} against ${one.here || 'none'}.`
    case 'main-response':
      return `the main response: ${one.there} against ${one.here}.`
    case 'scale':
      return `how the main response is scored: ${one.there} against ${one.here}.`
    case 'ingredient':
      return `${one.name}: ${two(one.here, one.there)}.`
    case 'yeast-form':
      return `the form of yeast: ${one.there} against ${one.here}.`
    case 'preferment':
      return `flour in the ${one.name}: ${two(one.here, one.there)}.`
    case 'cannot-be-compared':
      return 'the formulas cannot be set at one level, so nobody can tell whether they are the same.'
  }
}
