import type { ScoreTable } from '@/core/findings/table/score-table.ts'

const values = [66, 70, 74, 78, 82]
/** Liking that rises to a top near 74 and falls again; whole points, spread by taster and session without chance. */
const liking = [5, 6, 7, 6, 5]

/** Scores of an invented bake club: five hydrations, eight tasters, three sessions; liking and crust. */
export function bakeClubScores(): ScoreTable {
  const rows = [0, 1, 2].flatMap((session) =>
    values.flatMap((_, level) =>
      Array.from({ length: 8 }, (_unused, taster) => {
        const shift =
          ((taster * taster * 7 + level * level * 11 + session * 13 + taster * level * 3) % 4) - 1.5
        const given = Math.round(
          (liking[level] ?? 0) + shift * 0.8 + ((session * 2 + level) % 3) * 0.3,
        )
        const harsh = taster % 4 === 0 ? -1 : 0
        return {
          session: `s${session + 1}`,
          flight: `s${session + 1}f`,
          batch: `s${session + 1}b${level}`,
          piece: `s${session + 1}b${level}`,
          level,
          taster: `t${taster + 1}`,
          position: ((taster + level + session) % 5) + 1,
          minutes: 30 + ((taster * 3 + level * 7 + session * 11) % 20),
          handled: null,
          values: [given + harsh, 4 + ((taster + session + level) % 3)],
        }
      }),
    ),
  )
  return {
    factor: {
      kind: 'hydration',
      name: 'Hydration',
      unitOfMeasure: '% of flour',
      ordered: true,
      splitsAt: 'mix',
    },
    unit: 'batch',
    levels: values.map((value) => ({
      id: String(value),
      name: value,
      value,
      label: String(value),
      control: value === 74,
    })),
    responses: [
      {
        ...{ id: 'liking', name: 'Liking', scale: 'nine-point' },
        ...{ better: { is: 'higher' }, margin: 1, failures: 0 },
      },
      {
        id: 'crispness',
        name: 'Crispness',
        scale: 'nine-point',
        better: { is: 'higher' },
        margin: null,
        failures: 0,
      },
    ],
    rows,
    expectation: { direction: 'best-inside', bestGuess: 72 },
    tellApart: [],
    ease: values.map((level, index) => ({
      level: String(level),
      failures: index === 4 ? 2 : 0,
      pieces: 3,
      handsSeconds: 1500 + index * 300,
      handling: 8 - index,
    })),
  }
}
