export const CHROMIUM_ARGS: string[]
/** Where a Chromium-family browser stands on this machine, if any does. */
export function findChromium(): Promise<{ path: string; source: string } | undefined>
/** The same, installing one where it can; throws with what to install where it cannot. */
export function ensureChromium(options?: {
  log?: (line: string) => void
}): Promise<{ path: string; source: string }>
