/** How whoever waits for long work hears how far it is, and stops it. */
export interface LongWork {
  /** How much is done of all there is, in trials. */
  onProgress?: (done: number, total: number) => void
  /** Asked between two pieces of the work; once it answers true the work ends with what is whole. */
  stopped?: () => boolean
}
