import { levelVariances } from '@/core/design/level-variances.ts'
import type { Spread } from '@/core/design/spread.ts'
import { tellApartReach } from '@/core/design/tell-apart-reach.ts'
import { chanceFirst } from '@/core/statistics/power/chance-first.ts'
import { chanceToShow, type DesignToShow } from './chance-to-show.ts'
import type { HopedToShow } from './hoped-to-show.ts'
import type { HowMuch } from './how-much.ts'

export interface ProposalAsked {
  howMuch: HowMuch
  hoped: HopedToShow
  /** True where the factor acts after the mix, so that one dough may serve all levels. */
  actsLate: boolean
  /** How many levels there must be, such as the options of a choice; free where left out. */
  levels?: number
  /** The true difference (or the margin) the chances are for, in points; two unless given. */
  size?: number
  spread?: Spread
}

/** One way to make the trial, with what it is likely to do. */
export interface Way extends DesignToShow {
  /** As much as can be done; more or fewer sessions; a factor that acts late in place of this one. */
  kind: 'proposed' | 'more-days' | 'fewer-benches' | 'late-factor'
  sessionsAre: 'days' | 'benches'
  hoped: HopedToShow
  size: number
  /** Of showing what is hoped for, where it is true; 0 to 1. 0 with one session. */
  chance: number
  /** Chance that a level truly better by `size` than all others, these alike, comes first; said where nothing can be shown. */
  comesFirst: number
}

/** Only whether two levels are told apart at all: the chance to find it where half of the people can. */
export interface TellApartWay {
  kind: 'tell-apart'
  answers: number
  chance: number
}

export interface Proposal {
  way: Way
  /** Up to two others. */
  others: (Way | TellApartWay)[]
}

/** A design whose chance is no more than this lower, with fewer samples for each mouth, is the better proposal. */
const alike = 0.01
const mostLevels = 5
const fewestPeople = 3

/**
 * The design within what can be done that most likely shows what is hoped for, by the rules of evidence, with its chance, and up to two other
 * ways with theirs: further days or fewer benches, a factor that one dough split late would serve, or a set to tell two apart. Where one
 * session is all there is nothing can be shown, and the design is taken in which a truly better level most likely comes first.
 */
export function propose(asked: ProposalAsked): Proposal {
  const { howMuch, hoped } = asked
  const way = bestOf(asked, howMuch, 'proposed')
  const inClass = howMuch.benches > 1
  const others: (Way | null)[] = inClass
    ? [
        howMuch.benches > 2
          ? wayOf(asked, { ...way, sessions: way.sessions - howMuch.days }, 'fewer-benches')
          : null,
        asked.actsLate || hoped === 'pair'
          ? null
          : bestOf({ ...asked, actsLate: true }, howMuch, 'late-factor'),
      ]
    : [wayOf(asked, { ...way, sessions: Math.max(3, way.sessions + 1) }, 'more-days')]
  return {
    way,
    others: [...others, tellApartOf(howMuch)].filter((one) => one !== null).slice(0, 2),
  }
}

function bestOf(
  asked: ProposalAsked,
  { days, benches, tasters, doughs, bites }: HowMuch,
  kind: Way['kind'],
): Way {
  const { actsLate, hoped, levels: given } = asked
  const least = given ?? (hoped === 'best-inside' ? 3 : 2)
  const perBench = Math.floor(bites / benches)
  const room = Math.min(mostLevels, actsLate ? perBench : doughs, Math.max(2, perBench))
  const most = given ?? Math.max(least, room)
  const ways = Array.from({ length: most - least + 1 }, (_, at) => least + at).flatMap((levels) =>
    Array.from({ length: Math.max(1, Math.floor(perBench / levels)) }, (_, at) =>
      wayOf(
        asked,
        {
          ...{ levels, tasters, flights: at + 1, sessions: days * benches },
          unit: actsLate ? 'piece' : 'batch',
          sessionsAre: benches > 1 ? 'benches' : 'days',
        },
        kind,
      ),
    ),
  )
  const likely = (way: Way) => (days * benches < 2 ? way.comesFirst : way.chance)
  const top = Math.max(...ways.map(likely))
  const good = ways.filter((way) => likely(way) >= top - alike)
  const [first] = good.toSorted((a, b) => a.levels * a.flights - b.levels * b.flights)
  if (!first) throw new Error('no design to propose')
  return first
}

function wayOf(
  { hoped, size = 2, spread }: ProposalAsked,
  {
    levels,
    tasters,
    flights,
    sessions,
    unit,
    sessionsAre,
  }: Omit<DesignToShow, 'spread'> & Pick<Way, 'sessionsAre'>,
  kind: Way['kind'],
): Way {
  const design = { levels, tasters, flights, sessions, unit, ...(spread ? { spread } : {}) }
  const ofMean = Math.sqrt(levelVariances(design).theFactor)
  return {
    ...{ kind, ...design, sessionsAre, hoped, size },
    chance: chanceToShow(design, hoped, size),
    comesFirst: chanceFirst(levels, size / ofMean),
  }
}

function tellApartOf({ days, tasters }: HowMuch): TellApartWay | null {
  if (tasters < fewestPeople) return null
  const reach = tellApartReach({
    tellApart: { test: 'triangle', levelIds: ['first', 'last'] },
    tasters: Array.from({ length: tasters }, (_, at) => ({ tasterId: `${at}`, knows: false })),
    plannedSessions: days,
  })
  return reach && { kind: 'tell-apart', answers: reach.answers, chance: reach.power }
}
