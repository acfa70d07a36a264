import { fileTroubleText, type TroubleToSay } from './file-trouble-text.ts'

/** What a restore brought, as far as words need to know it. */
export interface RestoreToSay {
  total: number
  cameIn: number
  already: number
  left: readonly LeftToSay[]
  picturesLost: readonly string[]
  ended: 'whole' | 'stopped' | 'out-of-room' | 'failed' | null
}

/** A trial of a backup that did not come in. */
export interface LeftToSay {
  file: string
  question: string | null
  because: 'other-content' | 'trouble' | 'broken-bytes' | 'damaged-here'
  troubles: readonly TroubleToSay[]
}

const trials = (count: number) => (count === 1 ? '1 trial' : `${count} trials`)

/** How far a restore came: what came in, what was here already, what is still to come. */
export function restoreText({ total, cameIn, already, left, ended }: RestoreToSay): string {
  const done = cameIn + already + left.length
  const parts = [
    `${trials(cameIn)} came in`,
    already > 0 ? `${already} ${already === 1 ? 'was' : 'were'} here already` : '',
    left.length > 0 ? `${left.length} did not come in` : '',
  ].filter(Boolean)
  return `${parts.join(', ')}. ${endText(ended, total - done)}`.trim()
}

/** Pictures that were damaged in the backup; null when there were none. */
export function picturesLostText({
  picturesLost,
}: Pick<RestoreToSay, 'picturesLost'>): string | null {
  const count = picturesLost.length
  if (count === 0) return null
  return `${count === 1 ? '1 photo is' : `${count} photos are`} damaged in the backup and did not come in; the lines of the log that tell of ${count === 1 ? 'it' : 'them'} did. An older backup may still have ${count === 1 ? 'it' : 'them'}: restore that too, and only what is missing comes in.`
}

function endText(ended: RestoreToSay['ended'], open: number): string {
  const rest =
    open === 0
      ? 'photos may still be to come: restore the same file again, and only the rest comes in.'
      : `${trials(open)} of the backup ${open === 1 ? 'is' : 'are'} still to come: restore the same file again, and only the rest comes in.`
  switch (ended) {
    case 'whole':
      return ''
    case 'stopped':
      return open > 0 ? `Stopped; ${rest}` : ''
    case 'out-of-room':
      return `This device has no room left. Free some room; ${rest}`
    case 'failed':
      return `The notebook could not go on. Reload the page; ${rest}`
    case null:
      return `The restore was cut short when its window closed; ${rest}`
  }
}

/** One trial that did not come in, by its question or its file in the backup, and why. */
export function leftOutText({ file, question, because, troubles }: LeftToSay): string {
  const name = question === null ? file : `“${question}”`
  switch (because) {
    case 'other-content':
      return `${name}: the trial stands here with other entries and was left as it is. Read its file in by itself to take in what is new; it lies in the backup as ${file}.`
    case 'broken-bytes':
      return `${name}: this part of the backup is damaged and cannot be unpacked.`
    case 'damaged-here':
      return `${name}: the trial stands here too, but its record here cannot be read; it was left as it is.`
    case 'trouble': {
      const [first, ...others] = troubles.map(fileTroubleText)
      const more = others.length > 0 ? ` And ${others.length} more.` : ''
      return `${name}: ${first ?? 'it is not sound.'}${more}`
    }
  }
}

/** What a backup gives away of the trials in it that are sealed, by their number. */
export function sealedInFileText(sealed: number): string {
  const which = sealed === 1 ? '1 trial is sealed' : `${sealed} trials are sealed`
  return `${which}, but the file holds everything: levels, weights, letters and what each code stands for. Keep it from whoever still tastes.`
}
