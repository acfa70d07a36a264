import { listText } from '@/core/wording/words/list-text.ts'
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

/** What a restore would do, as far as words need to know it. */
export interface WouldRestoreToSay {
  total: number
  comeIn: readonly (string | null)[]
  already: number
  left: readonly LeftToSay[]
  houses: number
  kitchenThings: number
  settings: {
    appearance?: string
    temperatureUnit?: string
    figures?: { mass: 'gram' | 'ounce'; hours: '24' | '12'; decimal: 'point' | 'comma' }
  }
}

function figuresTaken({
  mass,
  hours,
  decimal,
}: NonNullable<WouldRestoreToSay['settings']['figures']>) {
  return `weights in ${mass}s, times by ${hours} hours, decimals after a ${decimal}`
}

/** What a restore would do, a sentence for each part; trials that would come in, and those that would not, are listed by themselves. */
export function wouldRestoreText(would: WouldRestoreToSay): string[] {
  const { total, comeIn, already, left, houses, kitchenThings, settings } = would
  const counted = (count: number, one: string, many: string) =>
    count === 0 ? '' : `${count} ${count === 1 ? one : many}`
  const beside = [
    counted(houses, 'house formula', 'house formulas'),
    counted(kitchenThings, 'thing of the kitchen', 'things of the kitchen'),
  ].filter(Boolean)
  const taken = [
    settings.appearance === undefined ? '' : `the appearance (${settings.appearance})`,
    settings.temperatureUnit === undefined ? '' : `degrees ${settings.temperatureUnit}`,
    settings.figures === undefined ? '' : figuresTaken(settings.figures),
  ].filter(Boolean)
  return [
    comeIn.length === 0
      ? `No trial would come in of the ${trials(total)} in it.`
      : `${trials(comeIn.length)} of ${total} would come in.`,
    already === 0
      ? ''
      : `${already} ${already === 1 ? 'is' : 'are'} here already, the same to the last entry.`,
    left.length === 0
      ? ''
      : `${left.length} would not come in, and what stands here stays as it is.`,
    beside.length === 0
      ? ''
      : `${beside.join(' and ')} would come in too; what is here of both stays.`,
    taken.length === 0 ? '' : `It would change ${taken.join(' and ')}.`,
  ].filter(Boolean)
}

/** How the notebook stands to its last backup, as far as words need to know it. */
export interface BackupStateToSay {
  at: number | null
  trials: number
  houses: number
  kitchen: boolean
}

/** What is in no backup yet, and how old the last one is. */
export function backupStateText(
  { at, trials: newer, houses, kitchen }: BackupStateToSay,
  now: number,
): string {
  const days = at === null ? 0 : Math.floor((now - at) / 86_400_000)
  const when =
    at === null
      ? 'Nothing was backed up from this device yet'
      : `The last backup was made ${days === 0 ? 'within a day' : days === 1 ? 'a day ago' : `${days} days ago`}`
  const parts = [
    newer === 0 ? '' : trials(newer),
    houses === 0 ? '' : houses === 1 ? '1 house formula' : `${houses} house formulas`,
    kitchen ? 'the kitchen' : '',
  ].filter(Boolean)
  if (parts.length === 0) return at === null ? `${when}.` : `${when}, and nothing is newer.`
  const one = newer + houses + (kitchen ? 1 : 0) === 1
  return `${when}; ${listText(parts)} ${one ? 'has' : 'have'} work that is in no backup.`
}

/** What a backup gives away of the trials in it that are sealed, by their number. */
export function sealedInFileText(sealed: number): string {
  const which = sealed === 1 ? '1 trial is sealed' : `${sealed} trials are sealed`
  return `${which}, but the file holds everything: levels, weights, letters and what each code stands for. Keep it from whoever still tastes.`
}
