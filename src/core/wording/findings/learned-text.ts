import type { Spread } from '@/core/design/spread.ts'
import type { MixingWork } from '@/core/dough-temperature/mixing-work.ts'
import type { MixerWork } from '@/core/learned/learned-mixing-work.ts'
import type { LearnedOven } from '@/core/learned/learned-ovens.ts'
import type { Panel } from '@/core/learned/learned-spread.ts'
import type { UntoldReason } from '@/core/learned/logged-mixes.ts'

import { decimalText, shortUnit } from '@/core/units/number-text.ts'
import { mixingWayRests, mixingWayTexts } from '@/core/wording/weighing/mixing-way-text.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'
import { countText, listText } from '@/core/wording/words/list-text.ts'

/** What is known of a mixer's work and how many doughs it rests on; or that nothing is. */
export function mixingWorkText(work: MixerWork): string {
  if (!work.ok) return 'Nothing learned of its mixing work yet.'
  const { kilojoulesPerKilogram, sdKilojoulesPerKilogram, batches, trialIds, slope, factor } = work
  const spread =
    sdKilojoulesPerKilogram === null
      ? ''
      : `, give or take ${decimalText(sdKilojoulesPerKilogram, 1)}`
  const rests = `learned from ${countText(batches, 'batch', 'batches')} in ${countText(trialIds.length, 'trial')}`
  const unit = shortUnit(factor?.unitOfMeasure ?? '')
  const along =
    slope && factor
      ? ` For each ${unit === '' ? 'step of 1' : `1 ${unit}`} more of ${factor.name.toLowerCase()} it ${
          slope.perLevel < 0 ? 'falls' : 'rises'
        } by ${decimalText(Math.abs(slope.perLevel), 2)}.`
      : ''
  return `Mixing work ${decimalText(kilojoulesPerKilogram, 1)} kJ per kg of flour${spread}, ${rests}.${along}`
}

const untoldTexts: Record<UntoldReason, string> = {
  'mix-not-logged': 'the start of the mix was not logged',
  'dough-not-read': 'no dough temperature was logged within a quarter of an hour of the mix',
  'water-not-read': 'the water’s temperature was not logged',
  'no-temperatures': 'neither plan nor log says how warm flour and room were',
  'cannot-be-weighed': 'the level makes no formula',
}

/** The doughs that tell nothing of the mixing work, and what was missing; an empty text when each tells. */
export function untoldText({ untold }: Pick<MixerWork, 'untold'>): string {
  if (untold.length === 0) return ''
  const parts = untold.map(
    ({ reason, batches }) => `${countText(batches, 'batch', 'batches')}: ${untoldTexts[reason]}`,
  )
  return `Not counted: ${parts.join('; ')}.`
}

/** How soon an oven is as hot again after a load, and how many pulls say so; or why that is not known yet, and the mend. */
export function learnedOvenText(oven: LearnedOven): string {
  const pulls = countText(oven.pulls, 'pull')
  if (oven.ok)
    return `Hot again ${durationText(oven.recoverySeconds)} after a load, learned from the floor as it was read after ${pulls} in ${countText(oven.trialIds.length, 'trial')}.`
  if (oven.reason === 'few-pulls')
    return `The floor was read after ${pulls} so far; from three on that tells how soon it is hot again after a load.`
  const least = oven.atLeastSeconds === null ? '' : `, up to ${durationText(oven.atLeastSeconds)}`
  return `After most of ${pulls} the floor was still colder when it was read${least} after the pull. Read it again just before the next launch.`
}

const partTexts: Record<keyof Spread, (sd: string) => string> = {
  residual: (sd) => `one answer scatters by ${sd} when all else is the same`,
  tasterLevel: (sd) => `tasters’ own preferences by ${sd}`,
  piece: (sd) => `pieces of one dough by ${sd}`,
  batch: (sd) => `doughs of one level by ${sd}`,
}

const partNames: Record<keyof Spread, string> = {
  residual: 'single answers',
  tasterLevel: 'tasters’ own preferences',
  piece: 'pieces of one dough',
  batch: 'doughs of one level',
}

/** How a panel scatters on nine points and what that rests on; or what is still missing. */
export function panelText(panel: Panel): string {
  const rests = `${countText(panel.scores, 'score')} in ${countText(panel.trialIds.length, 'finished trial')}`
  if (!panel.ok)
    return panel.reason === 'needs-two-trials'
      ? `So far ${rests}; from the second finished trial on, their own scatter replaces what is common practice.`
      : `From ${rests} nothing can be told: none had a second flight or session, so no answer can be compared with another.`
  const { parts } = panel
  const keys = Object.keys(partTexts) as (keyof Spread)[]
  const told = keys.flatMap((key) => {
    const found = parts[key]
    return found ? [partTexts[key](decimalText(found.sd, 1))] : []
  })
  const open = keys.filter((key) => parts[key] === null).map((key) => partNames[key])
  const missing = open.length === 0 ? '' : ` Not told by these trials: ${listText(open)}.`
  return `On nine points ${listText(told)}; learned from ${rests}.${missing}`
}

/** Where the spreads behind a plan's power come from, in one sentence for the parts learned and one for those that are not. */
export function spreadSourceText(
  spread: Spread,
  learned: readonly (keyof Spread)[],
  trials: number,
): string {
  const keys = Object.keys(partNames) as (keyof Spread)[]
  const said = (those: readonly (keyof Spread)[]) =>
    listText(those.map((key) => `${decimalText(spread[key], 1)} between ${partNames[key]}`))
  const usual = keys.filter((key) => !learned.includes(key))
  const own =
    learned.length === 0
      ? ''
      : `Learned from ${countText(trials, 'finished trial')} of these tasters: ${said(learned)}. `
  return usual.length === 0
    ? own.trim()
    : `${own}Common practice on nine points, without a source: ${said(usual)}.`
}

/** Which mixing work the water of some batches was computed with, and where that comes from; an empty text without batches. */
export function workSourceText(works: readonly MixingWork[]): string {
  const [first] = works
  if (!first) return ''
  const ends = [Math.min, Math.max].map((end) =>
    decimalText(end(...works.map((each) => each.kilojoulesPerKilogram)), 1),
  )
  const work = `${[...new Set(ends)].join(' to ')} kJ per kg of flour`
  const { from, batches, way } = first
  switch (from) {
    case 'learned':
      return `Mixing work learned from ${countText(batches, 'batch', 'batches')}: ${work}.`
    case 'plan':
      return `Mixing work as this plan says: ${work}.`
    case 'mixer':
      return `Mixing work as the mixer’s entry says: ${work}.`
    case 'usual':
      return `Mixed ${mixingWayTexts[way]}: ${work}, ${mixingWayRests[way]}.`
  }
}
