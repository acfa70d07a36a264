import { type Manner, plainManner } from '@/core/units/manner.ts'
import { CommandTrouble } from './trouble.ts'
import type { VerbOption } from './verb.ts'

/** How figures are written, of every verb: what is read from files and options stays metric where no unit is typed. */
export const unitsOption: VerbOption = {
  type: 'string',
  value: 'WORDS',
  help: 'how figures are written, such as oz,F,12h,comma (else g,C,24h,point); answers in JSON stay as they are',
}

const words: Readonly<Record<string, Partial<Manner>>> = {
  g: { mass: 'gram' },
  oz: { mass: 'ounce' },
  c: { temperature: 'celsius' },
  f: { temperature: 'fahrenheit' },
  '24h': { hours: '24' },
  '12h': { hours: '12' },
  point: { decimal: 'point' },
  comma: { decimal: 'comma' },
}

/** The manner that `--units` asks for; a word that is none, or two of one kind, is refused. */
export function unitsAsked(text: string | undefined): Manner {
  if (text === undefined) return plainManner
  let asked: Partial<Manner> = {}
  for (const word of text
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean)) {
    const says = words[word.replace('°', '')]
    const kind = Object.keys(says ?? {})[0] as keyof Manner | undefined
    if (!says || kind === undefined)
      throw new CommandTrouble(
        `--units ${text}: “${word}” is none of ${Object.keys(words).join(', ')}.`,
      )
    if (asked[kind] !== undefined && asked[kind] !== says[kind])
      throw new CommandTrouble(`--units ${text}: “${word}” says again what was said; choose one.`)
    asked = { ...asked, ...says }
  }
  return { ...plainManner, ...asked }
}
