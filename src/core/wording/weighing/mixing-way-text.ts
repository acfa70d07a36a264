import { type MixingWay, mixingWays } from '@/core/kitchen/mixing-way.ts'

/** A way of mixing, after “mixed”. */
export const mixingWayTexts: Readonly<Record<MixingWay, string>> = {
  hand: 'by hand in a bowl or tub',
  bench: 'by hand, kneaded on the bench',
  gentle: 'by a gentle machine: fork, diving arm, slow speed',
  stand: 'by a stand mixer',
  spiral: 'by a spiral, or long at second speed',
}

/** The ways of mixing to choose from. */
export const mixingWayOptions = mixingWays.map((value) => ({ value, label: mixingWayTexts[value] }))

/** What the usual mixing work of a way rests on. */
export const mixingWayRests: Readonly<Record<MixingWay, string>> = {
  hand: 'from eleven published doughs',
  bench: 'from one account of warm hands',
  gentle: 'from the trade’s friction factors',
  stand: 'from the trade’s friction factors',
  spiral: 'from the trade’s friction factors',
}
