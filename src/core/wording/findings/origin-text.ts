import { countText, listText } from '@/core/wording/words/list-text.ts'

/** Whether the findings were opened before the last planned session, by the moments when. */
export function earlyLooksText(moments: readonly string[]): string {
  return moments.length === 0
    ? 'Nobody opened the findings before the last planned session.'
    : `The findings were opened before the last planned session: ${listText(moments)}. Looking early makes chance finds likelier.`
}

/** How many sessions were added; nothing to say of none. */
export function addedSessionsText(count: number): string {
  return count === 0
    ? ''
    : `${countText(count, 'session was', 'sessions were')} added after the planned ones.`
}

/** How often a code was looked behind too early; nothing to say of never. */
export function peeksText(count: number): string {
  return count === 0
    ? ''
    : `Somebody looked at what a code stood for before the unsealing, ${countText(count, 'time')}.`
}

/** From which seeds the draws of a trial and of its sessions start. */
export function seedsText(trialSeed: number, sessionSeeds: readonly number[]): string {
  return `Draws start from seed ${trialSeed}; each session keeps its own: ${listText(sessionSeeds.map(String)) || 'none yet'}.`
}

/** By what anybody can tell that a trial file is the one the report was made of, and which program made it. */
export function dataText(sha256: string, version: string): string {
  return `The data: SHA-256 ${sha256} of the trial file. Evenhand ${version} makes the same report of it again, byte for byte.`
}

export const revisionText = (revision: number) => `The plan stands at revision ${revision}.`
