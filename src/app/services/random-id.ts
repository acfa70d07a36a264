/** A new opaque id: 16 random bytes as 22 letters, digits, hyphens and underscores. Works on plain http too. */
export function randomId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '')
}

/** A seed for a new trial: a whole number from 0 to 2^32 - 1. */
export function randomSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 0
}
