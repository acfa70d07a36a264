/** How long a test waits for a hub, milliseconds: a machine that is busy elsewhere may leave it without a turn for seconds. */
export const patience = 30_000
