/** With more sessions than this how clear each look has to be is known only nearly: the rule was worked out up to here. */
export const mostSessionsLookedAt = 8
