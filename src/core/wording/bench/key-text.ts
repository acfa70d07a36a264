/** Why the key of the codes is covered, and who may see it. */
export function keyCoveredText(bakerTastes: boolean): string {
  return bakerTastes
    ? 'Whoever bakes tastes blind, so no code stands beside a letter here: print it face down for whoever plates, or let them look.'
    : 'A helper keeps the key, so it is not shown here: print it for them, face down, or let them look.'
}
