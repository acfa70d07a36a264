import { type ChildProcess, fork } from 'node:child_process'
import type { FuzzMessage } from './fuzz-child.ts'

/** No file may keep a verb busy for longer, in milliseconds of the processor. */
const mostMilliseconds = 2000
/** What the planning of a day gives itself on top. */
const searchMilliseconds = 2000
/** A case that says nothing for so long hangs; on a busy machine time of day runs ahead of the processor's. */
const hangsAfterMilliseconds = 120_000
/** So many processes share the work. */
const processes = 2
/** A process's whole heap: a case that wants more ends it. */
const mostMegabytes = 512

interface Defect {
  what: 'threw' | 'half taken' | 'too slow' | 'hung or out of room'
  words: string
}

interface Tally {
  counts: Map<string, number>
  slowest: FuzzMessage | null
  megabytes: number
  defects: Defect[]
  done: number
}

/**
 * Spoils samples, tables and backups a number of times (20,000 unless told) and gives each to the reader and every verb, in
 * processes of their own under watch; prints seed, figures and time. Told a last number, a seed and a first number, it works
 * cases again. Answers 1 when anything threw, hung, ran out of room or took too long.
 */
export async function run([
  end = '20000',
  seed = '1',
  begin = '0',
]: readonly string[]): Promise<number> {
  const tally: Tally = { counts: new Map(), slowest: null, megabytes: 0, defects: [], done: 0 }
  const began = Date.now()
  const [first, last] = [Number(begin), Number(end)]
  const share = Math.ceil((last - first) / processes)
  const shares = Array.from({ length: processes }, async (_, index) => {
    const until = Math.min(last, first + (index + 1) * share)
    for (let next = first + index * share; next < until; )
      next = await watched(Number(seed), next, until, tally)
  })
  await Promise.all(shares)
  report(tally, last - first)
  const seconds = Math.round((Date.now() - began) / 1000)
  console.log(`seed ${seed}, cases ${first} to ${last - 1}, ${seconds} s`)
  return tally.defects.length > 0 ? 1 : 0
}

/** Works cases until the end or until one breaks the process; the number of the next case to work. */
function watched(seed: number, first: number, end: number, tally: Tally): Promise<number> {
  return new Promise((resolve) => {
    const child = fork(
      'src/cli/run-script.cjs',
      ['test/fuzz/fuzz-child.ts', String(seed), String(first), String(end)],
      { execArgv: [`--max-old-space-size=${mostMegabytes}`] },
    )
    let at = first
    let watch = patience(child)
    child.on('message', (message: FuzzMessage | { begins: number }) => {
      clearTimeout(watch)
      watch = patience(child)
      if ('begins' in message) at = message.begins
      else take(message, tally)
    })
    child.on('exit', (code) => {
      clearTimeout(watch)
      if (code === 0) return resolve(end)
      const words = `case ${at}: hung, or wanted more than ${mostMegabytes} MB`
      tally.defects.push({ what: 'hung or out of room', words })
      resolve(at + 1)
    })
  })
}

const patience = (child: ChildProcess) =>
  setTimeout(() => child.kill('SIGKILL'), hangsAfterMilliseconds)

function take(message: FuzzMessage, tally: Tally): void {
  tally.done += 1
  tally.megabytes = Math.max(tally.megabytes, message.megabytes)
  if (message.defect !== undefined) {
    const what = message.halfTaken ? 'half taken' : 'threw'
    tally.defects.push({ what, words: `case ${message.number}: ${message.defect}` })
  } else {
    const what = `${message.kind} ${message.came}`
    tally.counts.set(what, (tally.counts.get(what) ?? 0) + 1)
  }
  if (message.milliseconds > (tally.slowest?.milliseconds ?? 0)) tally.slowest = message
  const most = mostMilliseconds + (message.searched ? searchMilliseconds : 0)
  if (message.milliseconds > most) {
    const words = `case ${message.number}: took ${Math.round(message.milliseconds)} ms`
    tally.defects.push({ what: 'too slow', words })
  }
}

function report({ counts, slowest, megabytes, defects, done }: Tally, end: number): void {
  for (const [what, count] of [...counts].toSorted(([a], [b]) => (a < b ? -1 : 1)))
    console.log(`${what}: ${count}`)
  if (slowest)
    console.log(
      `slowest: case ${slowest.number}, ${Math.round(slowest.milliseconds)} ms of at most ${mostMilliseconds}`,
    )
  for (const { words } of defects.slice(0, 20)) console.log(words)
  const times = (what: Defect['what']) => defects.filter((defect) => defect.what === what).length
  console.log(
    `${done} of ${end} spoiled files worked: ${times('threw')} threw, ${times('half taken')} half taken, ${times('too slow')} over ${mostMilliseconds / 1000} s, ${times('hung or out of room')} hung or out of room`,
  )
  console.log(
    `most memory of a process, program and all: ${Math.round(megabytes)} MB, of which ${mostMegabytes} MB may be its heap`,
  )
}
