import { isEither } from './either-amount.ts'
import { onlyDescribes } from './name-in-line.ts'
import { percentAmount, statedAmounts, withUnitAtEach } from './stated-amount.ts'
import { wholeAmount } from './whole-amount.ts'

const between =
  /(?<!\d),|,(?!\d)|;|(?<!\d\s?\p{L}{0,3}\s?)[+&](?!\s?\d)|\s(?:and|und|et|e|ed|plus)\s(?=.*\d)/iu
const eggs =
  /(?<![\p{L}\d.,])\d+\s+(?:\p{L}+\s+)?(?:eggs?|yolks?|eier|ei|eigelbe?|[œo]e?ufs?|uov[oa]|tuorl[oi])(?!\p{L})/iu
const partOfAnother = /(?<!\p{L})(?:davon|of which|dont|di cui|including|inkl\.)(?!\p{L})/iu
const inBrackets = /\([^()]*\)/gu
const letters = /\p{L}{2}/u

/**
 * The ingredients that one line names, each with its own amount: "500 g flour, 350 g water, 10 g salt" are three, "butter,
 * softened, 50 g" is one, and so is an amount said twice. What stands in brackets stays with what it follows.
 */
export function ingredientsIn(line: string): string[] {
  const text = withUnitAtEach(line)
  if (isEither(text) || partOfAnother.test(text)) return [text]
  return joined(parts(text)).flatMap(inARow)
}

/** The pieces between commas and joining words outside of brackets. */
function parts(text: string): string[] {
  const held: string[] = []
  const bare = text.replace(inBrackets, (inner) => {
    held.push(inner)
    return `\ue000${held.length - 1}\ue000`
  })
  const back = (part: string) =>
    part.replace(/\ue000(\d+)\ue000/gu, (_, at: string) => held[Number(at)] ?? '')
  return bare
    .split(between)
    .map((part) => back(part ?? '').trim())
    .filter((part) => part !== '')
}

/** Pieces put together again until each has a name and an amount of its own. */
function joined(pieces: readonly string[]): string[] {
  const made: string[] = []
  for (const piece of pieces) {
    const last = made.at(-1)
    const alone = isMeasured(piece) && !onlyDescribes(piece) && letters.test(nameOf(piece))
    if (last === undefined || (alone && isMeasured(last) && letters.test(nameOf(last))))
      made.push(piece)
    else made[made.length - 1] = `${last}, ${piece}`
  }
  return made
}

const isMeasured = (text: string) =>
  statedAmounts(text).length > 0 || percentAmount.test(text) || eggs.test(text)

function nameOf(text: string): string {
  const bare = text.replace(inBrackets, ' ')
  const left = statedAmounts(bare).reduceRight(
    (all, { from, to }) => `${all.slice(0, from)} ${all.slice(to)}`,
    bare,
  )
  return left
    .replace(/\d+(?:[.,]\d+)?\s*%/gu, ' ')
    .replace(/(?<!\p{L})(?:or|to|x)(?!\p{L})/giu, ' ')
}

/** Ingredients that follow each other with nothing between: "100 g rye flour 5 g salt", "flour 500 g water 350 g". */
function inARow(text: string): string[] {
  const row = amountsOf(text)
  if (row.length < 2 || wholeAmount(text)?.ok) return [text]
  const first = row[0]
  const amountFirst = first !== undefined && !letters.test(text.slice(0, first.from))
  const cuts = amountFirst
    ? row.slice(1).map(({ from }) => from)
    : row.slice(0, -1).map(({ to }) => to)
  const made = [0, ...cuts].map((from, at) => text.slice(from, cuts[at] ?? text.length).trim())
  return made.every((one) => letters.test(nameOf(one)) && isMeasured(one)) ? made : [text]
}

/** Amounts outside of brackets; a weight and the percent beside it are one. */
function amountsOf(text: string): { from: number; to: number }[] {
  const bare = text.replace(inBrackets, (inner) => ' '.repeat(inner.length))
  const percents = [...bare.matchAll(/(?<![\p{L}\d.,])\d+(?:[.,]\d+)?\s*%/gu)].map((found) => ({
    from: found.index,
    to: found.index + found[0].length,
  }))
  const all = [...statedAmounts(bare), ...percents].sort((one, other) => one.from - other.from)
  const made: { from: number; to: number }[] = []
  for (const { from, to } of all) {
    const last = made.at(-1)
    if (last && !letters.test(bare.slice(last.to, from))) last.to = to
    else made.push({ from, to })
  }
  return made
}
