import type { ScoreRow, ScoreTable } from '@/core/findings/table/score-table.ts'

/** Made-up liking scores of a size: levels 60, 62 and so on, every taster at every level in every session, one flight each. */
export function scoresForSpeed(size: {
  levels: number
  tasters: number
  sessions: number
}): ScoreTable {
  let state = 20
  const noise = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 4294967296 - 0.5
  }
  const rows: ScoreRow[] = []
  for (let session = 0; session < size.sessions; session += 1) {
    for (let level = 0; level < size.levels; level += 1) {
      const batch = noise()
      for (let taster = 0; taster < size.tasters; taster += 1) {
        rows.push({
          session: `${session}`,
          flight: `${session}`,
          batch: `${session} ${level}`,
          piece: `${session} ${level}`,
          level,
          taster: `t${taster}`,
          position: ((level + taster + session) % size.levels) + 1,
          minutes: 5 + 3 * noise(),
          handled: null,
          values: [6 - 0.1 * (level - 2) ** 2 + 0.1 * taster + batch + 2 * noise()],
        })
      }
    }
  }
  return {
    factor: {
      kind: 'hydration',
      name: 'hydration',
      unitOfMeasure: '%',
      ordered: true,
      splitsAt: 'mix',
    },
    unit: 'batch',
    levels: Array.from({ length: size.levels }, (_, at) => ({
      id: `${60 + 2 * at}`,
      name: 60 + 2 * at,
      value: 60 + 2 * at,
      label: `${60 + 2 * at}`,
      control: at === 1,
    })),
    responses: [
      {
        ...{ id: 'liking', name: 'liking', scale: 'nine-point' },
        ...{ better: { is: 'higher' }, margin: 1, failures: 0 },
      },
    ],
    rows,
    expectation: null,
    tellApart: [],
    ease: null,
  }
}
