/** The first mix of the made-up day: 2 May 2026, 06:00 UTC. */
export const begun = Date.UTC(2026, 4, 2, 6)

/** Where it was lived. */
export const zone = 'Europe/Rome'

/** A minute in milliseconds. */
export const minutes = 60_000
