import type { Verb } from './verb.ts'

/** The verbs by name; each is loaded when asked for, so that a short answer starts fast. */
export const verbs: Record<string, () => Promise<Verb>> = {
  check: async () => (await import('./check-verb.ts')).checkVerb,
  weigh: async () => (await import('./weigh-verb.ts')).weighVerb,
  fairness: async () => (await import('./fairness-verb.ts')).fairnessVerb,
  clock: async () => (await import('./clock-verb.ts')).clockVerb,
  detect: async () => (await import('./detect-verb.ts')).detectVerb,
  findings: async () => (await import('./findings-verb.ts')).findingsVerb,
  adopt: async () => (await import('./adopt-verb.ts')).adoptVerb,
  pool: async () => (await import('./pool-verb.ts')).poolVerb,
  archive: async () => (await import('./archive-verb.ts')).archiveVerb,
  report: async () => (await import('./report-verb.ts')).reportVerb,
}
