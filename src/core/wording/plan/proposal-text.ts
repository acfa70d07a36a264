import type { Proposal, TellApartWay, Way } from '@/core/design/proposal/propose.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { decimalText, plainNumber, shortUnit, withUnit } from '@/core/units/number-text.ts'
import { asSentenceStart, countText, countWord, listText } from '@/core/wording/words/list-text.ts'

/** Trials out of a hundred, as a figure to be drawn large before its words. */
export interface ChanceText {
  inHundred: number
  words: string
}

const inHundred = (chance: number) => Math.round(chance * 100)
const pointsOf = (size: number) => `${plainNumber(size)} ${size === 1 ? 'point' : 'points'}`

/** How many of a hundred such trials show what is hoped for, and what must be true for it. */
export function chanceOfWay(way: Way): ChanceText {
  if (way.sessions < 2) {
    const liked = way.tasters === 1 ? 'you like one level' : 'one level is liked'
    return {
      inHundred: 0,
      words: `in 100 such days can show it: one day never does. If ${liked} ${pointsOf(way.size)} better than the others, it comes first in ${inHundred(way.comesFirst)}; if all are alike, one comes first all the same.`,
    }
  }
  const what = {
    'best-inside': `that the best lies in between, if it is liked ${pointsOf(way.size)} better than both ends`,
    rise: `that it goes up or down, if the last level lies ${pointsOf(way.size)} from the first`,
    'as-good': `that the least does as well within ${pointsOf(way.size)}, if all are alike`,
    pair: `which is better, if one is liked ${pointsOf(way.size)} better`,
  }[way.hoped]
  return { inHundred: inHundred(way.chance), words: `in 100 such trials show ${what}.` }
}

/** The plan that is proposed, as one sentence. */
export function proposalSentence(
  plan: Pick<Plan, 'levels' | 'factor'>,
  { flights, sessions, tasters, unit, sessionsAre, levels }: Way,
): string {
  const names = plan.levels.map(({ label }) => label)
  const unitText = plan.factor.acts.on === 'choice' ? '' : shortUnit(plan.factor.unitOfMeasure)
  const which =
    names.length === levels ? withUnit(listText(names), unitText) : countText(levels, 'level')
  const dough = unit === 'piece' ? ', one dough divided late' : ''
  const pieces = `${countWord(flights)} ${flights === 1 ? 'piece' : 'pieces'} of each`
  const when = {
    days: sessions === 1 ? 'on one day' : `on ${countText(sessions, 'day')}`,
    benches: `at each of ${countText(sessions, 'bench', 'benches')}`,
  }
  const who =
    tasters === 1
      ? 'you score them without knowing which is which'
      : `${countText(tasters, 'person', 'people')} tasting blind`
  return `${which}${dough}, ${pieces}, ${when[sessionsAre]}; ${who}.`
}

/** Another way: what it is, and its chance in a few words. */
export function otherWayText(
  other: Way | TellApartWay,
  { way }: Proposal,
): { what: string; chance: string } {
  if (other.kind === 'tell-apart')
    return {
      what: 'Only: do you taste it at all?',
      chance: `first or last, a set to tell apart: ${decimalText(other.chance * 100, 0)} in 100, if half can`,
    }
  const chance = `${inHundred(other.chance)} in 100`
  switch (other.kind) {
    case 'more-days': {
      const more = other.sessions - way.sessions
      return more === 1
        ? { what: `${ordinals[other.sessions] ?? 'Another'} day`, chance }
        : {
            what: asSentenceStart(`${countText(more, 'more day', 'more days')} that join this one`),
            chance,
          }
    }
    case 'fewer-benches':
      return { what: asSentenceStart(countText(other.sessions, 'bench', 'benches')), chance }
    default:
      return { what: 'Split late: proof or oven instead', chance: `one dough, divided: ${chance}` }
  }
}

const ordinals: Readonly<Record<number, string>> = {
  3: 'A third',
  4: 'A fourth',
  5: 'A fifth',
  6: 'A sixth',
}

/** What one day yields, and at the end what it does not. */
export function yieldsOfOneDay(factorName: string): { does: string[]; doesNot: string } {
  return {
    does: [
      'how each handles, and what fails',
      'what else came along: warmth, order, age',
      'pictures side by side',
      'a first order of liking, blind',
      'what to bake next',
    ],
    doesNot: `no law of ${factorName}: that takes two days more, which join this one`,
  }
}
