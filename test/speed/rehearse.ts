import { commonSpread } from '@/core/design/spread.ts'
import type { RehearsalDesign } from '@/core/findings/rehearsal/null-trial.ts'
import { rehearse, rehearsedRungs } from '@/core/findings/rehearsal/rehearse.ts'

const designs: Omit<RehearsalDesign, 'spread' | 'margin'>[] = [
  { levels: 4, tasters: 6, sessions: 3, flights: 1, unit: 'batch' },
  { levels: 5, tasters: 8, sessions: 4, flights: 2, unit: 'batch' },
  { levels: 3, tasters: 4, sessions: 1, flights: 3, unit: 'batch' },
  { levels: 4, tasters: 6, sessions: 2, flights: 3, unit: 'piece' },
]
const kinds = ['matters', 'differs', 'leans', 'too-small', 'not-settled'] as const

/**
 * Rehearses the findings on trials in which nothing is different: `npm run rehearse -- [TRIALS] [SEED]`. Fails when the
 * third rung, given enough trials to tell, calls a difference in less than 4 % or more than 6 % of them.
 */
export function run([trialsText = '10000', seedText = '1']: string[]): number {
  const [trials, seed] = [Number(trialsText), Number(seedText)]
  if (!Number.isInteger(trials) || trials < 1 || !Number.isInteger(seed) || seed < 0) {
    process.stderr.write('rehearse takes a number of trials and a seed, both whole\n')
    return 2
  }
  const print = (line: string) => process.stdout.write(`${line}\n`)
  print(`${trials} made-up trials without any true difference, seed ${seed}, margin 1.`)
  print(`Spread: ${JSON.stringify(commonSpread)}`)
  let fair = true
  for (const design of designs) {
    const { levels, tasters, sessions, flights, unit } = design
    print('')
    print(
      `${levels} levels, ${tasters} tasters, ${sessions} sessions, ${flights} flights each, unit ${unit}`,
    )
    print(
      `${'rung'.padEnd(8)}${'F at 5 %'.padStart(10)}${kinds.map((kind) => kind.padStart(13)).join('')}`,
    )
    const found = rehearse({ ...design, spread: commonSpread, margin: 1 }, trials, seed)
    for (const rung of rehearsedRungs) {
      const { answered, called, said } = found[rung]
      const share = (count: number) =>
        answered === 0 ? '-' : `${((100 * count) / answered).toFixed(2)} %`
      const kindShares = kinds.map((kind) => share(said[kind]).padStart(13)).join('')
      print(`${rung.padEnd(8)}${share(called).padStart(10)}${kindShares}`)
    }
    const { answered, called } = found.factor
    const rate = called / answered
    if (answered >= 10_000 && (rate < 0.04 || rate > 0.06)) fair = false
  }
  if (!fair) print('\nThe third rung left 4 to 6 %.')
  return fair ? 0 : 1
}
