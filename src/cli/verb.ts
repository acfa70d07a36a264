/** What `node:util` parseArgs is told of an option. */
export interface VerbOption {
  type: 'string' | 'boolean'
  multiple?: boolean
  /** How its value is written in the help, such as COLUMN. */
  value?: string
  help: string
}

export interface Asked {
  file: string
  /** All files that were named; one alone where the verb takes no more. */
  files: string[]
  flag: (name: string) => boolean
  text: (name: string) => string | undefined
  texts: (name: string) => string[]
}

/** One verb of the command line: it answers with text to print. Trouble is thrown as `CommandTrouble`. */
export interface Verb {
  summary: string
  /** Sentences under the usage line. */
  about: string
  options: Record<string, VerbOption>
  /** It takes several files at a time. */
  several?: boolean
  answer: (asked: Asked) => Promise<string>
}

export const jsonOption: VerbOption = { type: 'boolean', help: 'answer in JSON, for machines' }
export const unsealOption: VerbOption = {
  type: 'boolean',
  help: 'look although the tasting is sealed; the file cannot record that look',
}
