import type { Presence } from '@/core/table/presence.ts'
import { durationText } from '@/core/wording/words/duration-text.ts'

export type PartName = 'bench' | 'oven' | 'key' | 'taster' | 'watch'

/** The parts of an open table, by what they are called and what each may see. */
export const partWords: Readonly<Record<PartName, { name: string; sees: string }>> = {
  bench: { name: 'Bench', sees: 'steps, clocks, weights, levels; no codes' },
  oven: { name: 'Oven', sees: 'loads, clocks, places; letters only' },
  key: { name: 'Key', sees: 'which code is which; never tastes' },
  taster: { name: 'Tasters', sees: 'their own ballot alone' },
  watch: { name: 'Watch', sees: 'how many ballots are in; no scores' },
}

/** What the oven sees where bake or proof are what differs: it could not work by letters alone. */
export const ovenSeesLevels = 'loads, clocks, places and levels, since they differ in the oven'

/** Since when a device was heard. */
export function presenceWords(presence: Presence): string {
  if (presence.state === 'never') return 'nobody yet'
  if (presence.state === 'revoked') return 'taken back'
  if (presence.state === 'here') return 'here now'
  return presence.minutes === 0
    ? 'last heard a minute ago'
    : `last heard ${presence.minutes} min ago`
}

/** How the line to the hub stands. */
export function lineWords(line: 'connecting' | 'here' | 'away' | 'refused' | undefined): string {
  if (line === undefined) return 'Another window of this browser works the table.'
  return {
    connecting: 'Looking for the hub.',
    here: 'The hub is there.',
    away: 'The hub is not reached. Everything goes on here; what is written goes out once it is back.',
    refused:
      'The hub does not let this device in any more: its code was taken back or is too old. Ask for a new code; what is written here stays.',
  }[line]
}

/** What keeps a table from being opened at a hub, and the mend. */
export function hubTroubleText(
  reason:
    | ('no-address' | 'no-code' | 'damaged' | 'needs-https' | 'other-host')
    | ('full' | 'taken' | 'not-yours' | 'not-understood' | 'hub-failed' | 'no-answer'),
): string {
  return {
    'no-address':
      'That does not begin with an address. Paste the whole link that the hub printed, from http to its last sign.',
    'no-code':
      'That is an address alone. The link that the hub printed has a long code behind “#/hub/”; paste it whole.',
    damaged: 'Signs of the link are missing or changed. Copy it once more from the hub.',
    'needs-https':
      'This page came by https, and from such a page browsers reach no hub on plain http. Open Evenhand at the address of the hub, or give the hub a certificate.',
    'other-host':
      'This page may talk only to where it came from. Open Evenhand at the address of the hub, take the trial there with Export and Import, and open the table there.',
    full: 'The hub holds as many tables as it may. Close one that is over, or start the hub with room for more.',
    taken: 'The hub knows such a table already. Press once more: a new one gets other keys.',
    'not-yours': 'The hub does not know this code any more. Copy the link it prints now.',
    'not-understood': 'The hub is of another version than this page. Load the page again.',
    'hub-failed': 'The hub could not make room for the table. Its own window says why.',
    'no-answer':
      'Nobody answers at that address. Is the hub started, and is this device in the same network?',
  }[reason]
}

/** Why an entry of another device was not taken in. */
export function notTakenText(reason: string): string {
  const known: Readonly<Record<string, string>> = {
    'bakers-own': 'only the baker’s device gives codes away or ends a tasting',
    lasting: 'it would take back what lasts',
    'does-not-fit': 'it speaks of something that is not in this trial',
    'not-of-this-part': 'this part may not write it',
    'other-answers': 'other answers about the same serving are in already; those stand',
    stale: 'it answers an older ballot; the newer one was sent since',
    older: 'a newer return is in already',
    'plan-moved':
      'the same part of the plan was changed on the baker’s device since; that stands, the rest came in',
    locked: 'it changes what is locked since the first mix',
  }
  return known[reason] ?? 'it could not be read'
}

/** What an open table shows the hub, whatever is sealed. */
export const hubSees =
  'What is said at the table is sealed; the hub keeps what it cannot read. It can see which part sent something when, how much in steps of 256 bytes, and from which address in the network.'

/** The three ways to have guests in, with what is missing in each. */
export const threeWays: readonly { name: string; says: string }[] = [
  {
    name: 'A real name and a certificate',
    says: 'for app and hub: guests’ own phones are sealed, work without a network and may use the camera. Nothing is missing.',
  },
  {
    name: 'An authority of your own',
    says: 'installed on the kitchen’s two or three devices: sealed there. Guests’ phones refuse the page.',
  },
  {
    name: 'Plain http',
    says: 'for tasters: each still gets their own ballot alone, but nothing is sealed on its way: whoever listens in the network can read and change it. No camera, and nothing works without the network. Scan the code with the phone’s own camera app.',
  },
]

/** Where the plan is changed, as the baker's device says it. `part` is that of the device it was handed to. */
export function planPlaceWords(part: PartName | null): string {
  return part === null
    ? 'It is changed on this device; the others see each change as it is kept. It can be handed to one device at bench or key, such as a laptop: then it is changed there alone.'
    : `It is changed at the device of ${partWords[part].name} alone; this one and the others see each change as it is kept.`
}

/** That a device that had the plan may still have changes of it. */
export const lateChangesJoin =
  'What was changed there and has not come yet is joined to the plan, field by field, when it comes; what you change meanwhile stands.'

/** How the clock of another device stands beside this one's, which is later by so many milliseconds. */
export function clockWords(laterMilliseconds: number): string {
  const by = durationText(Math.abs(laterMilliseconds) / 1000)
  return `its clock is ${by} ${laterMilliseconds > 0 ? 'behind' : 'ahead of'} this one; its entries stand by this one’s time`
}
