import type { DayProblem } from '@/core/clock-plan/search/day-problem.ts'
import { chanceFrom, wholeBetween } from '@/core/design/chance.ts'

/** Doughs in one order with one pair of hands and one oven: long waits, then a launch, a pull and a serve. */
export function madeDay(doughs: number, steps: number, seed: number): DayProblem {
  const chance = chanceFrom(seed, doughs, steps)
  const whole = (least: number, most: number) => wholeBetween(chance, least, most)
  const lines = Array.from({ length: doughs }, (_, at) => `dough${at}`)
  const names = Array.from({ length: steps }, (_, at) => `step${at}`)
  const [launch, pull, serve] = names.slice(-3)
  const stepOf = names.map((step) => {
    const hands = step === pull || step === launch || step === serve ? 15 : 30 * whole(2, 6)
    if (step === launch) return { step, hands, seconds: 60 * whole(4, 8), late: 5, early: 5 }
    if (step === pull) return { step, hands, seconds: 60, late: 30, early: 30 }
    const seconds = 60 * whole(15, 60) + doughs * 300
    return { step, hands, seconds, early: 180, late: 180 }
  })
  const id = (line: string, step = '') => `${line} ${step}`
  return {
    tasks: lines.flatMap((line) =>
      stepOf.map(({ step, hands }) => ({
        ...{ id: id(line, step), line, step, activeSeconds: hands },
        uses: [{ resource: 'hands', count: 1 }],
      })),
    ),
    waits: lines.flatMap((line) =>
      stepOf.slice(0, -1).map(({ step, seconds, early, late }, at) => ({
        ...{ from: id(line, step), to: id(line, names[at + 1]), seconds },
        ...{ earlySeconds: early, lateSeconds: late },
      })),
    ),
    orders: lines
      .slice(1)
      .flatMap((line, at) =>
        names
          .filter((step) => step !== pull)
          .map((step) => ({ from: id(lines[at] ?? '', step), to: id(line, step), seconds: 0 })),
      ),
    capacities: { hands: 1, oven: 1 },
    stays: lines.map((line) => ({
      ...{ resource: 'oven', count: 1, from: id(line, launch), to: id(line, pull) },
      afterSeconds: 60,
    })),
    blocks: [],
    equal: [
      {
        ...{ name: 'age at baking', toleranceSeconds: 900 },
        spans: lines.map((line) => ({ from: id(line, names[0]), to: id(line, launch) })),
      },
      {
        ...{ name: 'oven to mouth', toleranceSeconds: 60 },
        spans: lines.map((line) => ({ from: id(line, pull), to: id(line, serve), fromEnd: true })),
      },
    ],
    window: { startSeconds: 0, startFixed: true },
    ...{ done: [], nowSeconds: null },
    oven: { heatSecondsPerKelvin: 0, coolSecondsPerKelvin: 0 },
  }
}
