/** What a taster said of themselves between samples, and what they sealed last. */
export interface Said {
  /** They had the sample to warm up with. */
  warmedUp: boolean
  /** After how many samples they last said that they go on; null before they did. */
  restedAfter: number | null
  lastSealed: { code: string; at: number } | null
}

/** What the taster's own phone keeps of it, so that nobody is asked twice: neither after another code nor after a reload. */
export interface KeptSaid {
  said: Said
  keep: (more: Partial<Pick<Said, 'warmedUp' | 'restedAfter'>>) => Promise<void>
}
