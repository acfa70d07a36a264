import { readdirSync, readFileSync } from 'node:fs'
import type { DayProblem, Placed } from '@/core/clock-plan/search/day-problem.ts'

const folder = new URL('./reference/clock/', import.meta.url)

interface Use {
  r: string
  q: number
}

/** A reference day as its file has it; see the folder's README. */
export interface ReferenceDay {
  id: string
  tasks: { id: string; line: string; step: number; name: string; active: number; uses: Use[] }[]
  arcs: { from: string; to: string; nominal: number; early: number; late: number; kind: string }[]
  before?: { from: string; to: string; min?: number; starts?: boolean }[]
  resources: Record<string, number>
  spans?: (Use & { from: string; to: string; after?: number; celsius?: number })[]
  blocks?: (Use & { from: number; to: number })[]
  compare?: {
    name: string
    tol: number
    of: { from: string; to: string; fromEnd?: boolean; toEnd?: boolean }[]
  }[]
  window?: { start?: number; startFixed?: boolean; end?: number; endFixed?: boolean }
  fixed?: { task: string; at: number }[]
  now?: number
  oven?: { heatSecondsPerDegree: number; coolSecondsPerDegree: number }
}

export interface ReferenceCase {
  name: string
  day: ReferenceDay
  expect:
    | { feasible: true; z: number; E: number; span: number; sumInOrder: number; plan: Placed }
    | {
        feasible: false
        mends: {
          laterEndSeconds?: number
          rung?: number
          sameForAll?: { step: string; minutes: number }
          freeOvenOrder?: boolean
        }
      }
}

export function referenceCases(): ReferenceCase[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => {
      const { instance, expect } = JSON.parse(readFileSync(new URL(name, folder), 'utf8'))
      return { name: name.replace('.json', ''), day: instance, expect }
    })
}

/** A reference day as the search takes it. */
export function problemOf(day: ReferenceDay): DayProblem {
  const uses = ({ r, q }: Use) => ({ resource: r, count: q })
  const { window = {}, oven } = day
  const inOven = (day.spans ?? []).filter(({ r }) => r === 'oven')
  const launches = new Set(inOven.map(({ from }) => from))
  const pulls = new Set(inOven.map(({ to }) => to))
  return {
    tasks: day.tasks.map(({ id, line, step, name, active, uses: used }) => ({
      ...{ id, line, step: `${step} ${name}`, activeSeconds: active, uses: used.map(uses) },
    })),
    waits: day.arcs.map(({ from, to, nominal, early, late }) => ({
      ...{ from, to, seconds: nominal, earlySeconds: early, lateSeconds: late },
    })),
    orders: (day.before ?? []).map(({ from, to, min = 0, starts = false }) => ({
      ...{ from, to, seconds: min, fromBegin: starts },
      ofOven: launches.has(from) || launches.has(to) || pulls.has(from),
    })),
    capacities: day.resources,
    stays: (day.spans ?? []).map((span) => ({
      ...{ ...uses(span), from: span.from, to: span.to, afterSeconds: span.after ?? 0 },
      ...(span.celsius === undefined ? {} : { celsius: span.celsius }),
    })),
    blocks: (day.blocks ?? []).map((block) => ({
      ...{ ...uses(block), fromSeconds: block.from, toSeconds: block.to },
    })),
    equal: (day.compare ?? []).map(({ name, tol, of }) => ({
      ...{ name, toleranceSeconds: tol, spans: of },
    })),
    window: {
      startSeconds: window.start ?? 0,
      ...(window.startFixed ? { startFixed: true } : {}),
      ...(window.end === undefined ? {} : { endSeconds: window.end }),
      ...(window.endFixed ? { endFixed: true } : {}),
    },
    done: (day.fixed ?? []).map(({ task, at }) => ({ task, atSeconds: at })),
    nowSeconds: day.now ?? null,
    oven: {
      heatSecondsPerKelvin: oven?.heatSecondsPerDegree ?? 0,
      coolSecondsPerKelvin: oven?.coolSecondsPerDegree ?? 0,
    },
  }
}
