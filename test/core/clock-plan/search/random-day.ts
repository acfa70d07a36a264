import type { DayProblem, Wait } from '@/core/clock-plan/search/day-problem.ts'
import { chanceFrom, wholeBetween } from '@/core/design/chance.ts'

const letters = ['A', 'B', 'C', 'D']

/**
 * A day drawn from a seed: two to four lines of three to six steps in one order, the last three a launch, a pull and a serve;
 * with or without a mixer, a helper, quiet hours, an oven of one to three places that recovers, two temperatures, a step done
 * once for all, a rise that ends by a mark, a fixed end, and a log of what was done.
 */
export function randomDay(seed: number): DayProblem {
  const chance = chanceFrom(11, seed)
  const whole = (least: number, most: number) => wholeBetween(chance, least, most)
  const maybe = (outOf: number) => whole(1, outOf) === 1
  const lines = letters.slice(0, whole(2, 4))
  const early = Array.from({ length: whole(1, 3) }, (_, at) => `step${at}`)
  const steps = [...early, 'launch', 'pull', 'serve']
  const once = maybe(6)
  const mixer = maybe(3)
  const two = maybe(6)
  const id = (line: string, step: string) =>
    once && step === 'step0' ? 'all step0' : `${line} ${step}`
  const active = new Map(steps.map((step) => [step, step === 'pull' ? 15 : 30 * whole(1, 10)]))
  const ids = [...new Set(lines.flatMap((line) => steps.map((step) => id(line, step))))]
  const tasks = ids.map((own) => {
    const [line = '', step = ''] = own.split(' ')
    const uses = [{ resource: 'hands', count: 1 }]
    if (mixer && step === 'step0') uses.push({ resource: 'mixer', count: 1 })
    return { ...{ id: own, line, step, uses }, activeSeconds: active.get(step) ?? 60 }
  })
  const waitOf = (step: string): Omit<Wait, 'from' | 'to'> => {
    if (step === 'launch') return { seconds: 60 * whole(4, 30), earlySeconds: 20, lateSeconds: 20 }
    if (step === 'pull') return { seconds: 60 * whole(2, 20), earlySeconds: 60, lateSeconds: 60 }
    const seconds = 60 * whole(5, 60)
    if (maybe(5)) return { seconds, earlySeconds: 0, lateSeconds: 900 }
    return { seconds, earlySeconds: 180, lateSeconds: 180 }
  }
  const waits = steps.slice(0, -1).flatMap((step, at) => {
    const wait = waitOf(step)
    return lines.map((line) => ({
      ...{ from: id(line, step), to: id(line, steps[at + 1] ?? ''), ...wait },
    }))
  })
  const orders = lines
    .slice(1)
    .flatMap((line, at) =>
      steps
        .filter((step) => step !== 'pull' && !(once && step === 'step0'))
        .map((step) => ({ from: id(lines[at] ?? '', step), to: id(line, step), seconds: 0 })),
    )
  const places = whole(1, 3)
  const helper = maybe(4)
  const hour = 3600 * whole(0, 2)
  const quiet = maybe(5)
  const eatAt = maybe(5)
  return {
    ...{ tasks, waits, orders },
    capacities: { hands: helper ? 2 : 1, oven: places, ...(mixer ? { mixer: 1 } : {}) },
    stays: lines.map((line, at) => ({
      ...{ resource: 'oven', count: 1, from: id(line, 'launch'), to: id(line, 'pull') },
      afterSeconds: 60 * (seed % 3),
      ...(two ? { celsius: at === 0 ? 230 : 210 } : {}),
    })),
    blocks: [
      ...(helper
        ? [
            { resource: 'hands', count: 1, fromSeconds: 0, toSeconds: hour },
            { resource: 'hands', count: 1, fromSeconds: hour + 3600, toSeconds: 400_000 },
          ]
        : []),
      ...(quiet
        ? [{ resource: 'hands', count: helper ? 2 : 1, fromSeconds: 5000, toSeconds: 9000 }]
        : []),
    ],
    equal: [
      {
        name: 'age at baking',
        toleranceSeconds: 300,
        spans: lines.map((line) => ({ from: id(line, 'step0'), to: id(line, 'launch') })),
      },
      {
        name: 'oven to mouth',
        toleranceSeconds: 60,
        spans: lines.map((line) => ({
          from: id(line, 'pull'),
          to: id(line, 'serve'),
          fromEnd: true,
        })),
      },
    ],
    window: eatAt ? { startSeconds: 0, endSeconds: 60_000, endFixed: true } : { startSeconds: 0 },
    ...{ done: [], nowSeconds: null },
    oven: { heatSecondsPerKelvin: 6, coolSecondsPerKelvin: 20 },
  }
}
