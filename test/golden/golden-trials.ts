import { chanceFrom } from '@/core/design/chance.ts'
import { commonSpread } from '@/core/design/spread.ts'
import { madeTrial } from '@/core/findings/rehearsal/made-trial.ts'
import { normalDraws } from '@/core/findings/rehearsal/normal-draws.ts'
import { effectsOf, type TrueShape } from '@/core/findings/rehearsal/true-shapes.ts'
import type { ScoreTable, WrittenForScores } from '@/core/findings/table/score-table.ts'
import type { Expectation } from '@/core/trial/expectation.ts'
import type { Better } from '@/core/trial/response.ts'
import trials from './trials.json'

/** One made trial whose page is kept and read. */
export interface GoldenTrial {
  name: string
  seed: number
  shape: TrueShape
  size: number
  levels: number
  tasters: number
  sessions: number
  flights?: number
  unit?: 'batch' | 'piece'
  expected?: Expectation['direction'] | null
  guess?: number | null
  margin?: number | null
  better?: Better
  written?: Partial<WrittenForScores>
  choice?: boolean
  /** Minutes from the oven: equal, following the levels, or changing from session to session. */
  minutes?: 'none' | 'following' | 'changing'
  /** A level's rows of the last session are missing. */
  failed?: boolean
  response?: string
}

const nothingWritten = { hoped: null, mostSessions: null, early: false, againstUsual: false }

/** The scores of a golden trial: levels 62, 66, 70 … % of hydration, the second the usual; options with names for a choice. */
export function scoresOf(one: GoldenTrial): ScoreTable {
  const { levels, tasters, sessions, flights = 1, unit = 'batch', margin = 1 } = one
  const values = Array.from({ length: levels }, (_, at) => 62 + 4 * at)
  const made = madeTrial(
    { ...{ levels, tasters, sessions, flights, unit, values }, spread: commonSpread, margin: 1 },
    {
      effects: effectsOf(one.shape, levels, one.size),
      expected: one.expected ?? null,
      rounded: true,
      written: { ...nothingWritten, ...one.written },
    },
    normalDraws(chanceFrom(one.seed)),
  )
  const names = ['stone', 'steel', 'tray', 'cast iron', 'tile', 'grid']
  const [response] = made.responses
  if (!response) throw new Error('a made trial has a response')
  return {
    ...made,
    factor: one.choice
      ? {
          kind: 'choice',
          name: 'Baking surface',
          unitOfMeasure: '',
          ordered: false,
          splitsAt: 'oven',
        }
      : {
          kind: 'hydration',
          name: 'Hydration',
          unitOfMeasure: '% of flour',
          ordered: true,
          splitsAt: 'mix',
        },
    levels: made.levels.map((level, at) => ({
      ...level,
      control: at === 1,
      ...(one.choice ? { name: names[at] ?? '', value: null, label: names[at] ?? '' } : {}),
    })),
    responses: [
      {
        ...response,
        name: one.response ?? 'Liking',
        margin,
        better: one.better ?? { is: 'higher' },
      },
    ],
    rows: made.rows
      .filter((row) => !one.failed || row.session !== `${sessions - 1}` || row.level !== 1)
      .map((row) => ({ ...row, minutes: minutesOf(one, row.level, Number(row.session), levels) })),
    expectation: made.expectation && { ...made.expectation, bestGuess: one.guess ?? null },
  }
}

function minutesOf(
  { minutes = 'none' }: GoldenTrial,
  level: number,
  session: number,
  levels: number,
) {
  if (minutes === 'none') return null
  if (minutes === 'following') return 20 + 240 * level
  return 10 + 15 * ((level * (session + 1) + session) % levels)
}

export const goldenTrials = trials as readonly GoldenTrial[]
