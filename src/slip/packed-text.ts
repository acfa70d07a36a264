import { deflateSync, inflateSync } from 'fflate'

/**
 * Words that ballots are made of, so that a short text packs well. Part of version 1 of a slip: it never changes, since a slip
 * that was printed must stay readable.
 */
const dictionary = new TextEncoder().encode(
  [
    'crustaceans\nfish\neggs\npeanuts\nsoybeans\nmilk\nnuts\ncelery\nmustard\nsesame\nsulphites\nlupin\nmolluscs\ncereals with gluten',
    'not at all\nextremely\nmuch too little\nmuch too much\nmuch too bland\nmuch too salty\nsoft\nvery crisp\ntight\nvery open\ntender\ntough\npale\ndark',
    'Crispness\nOpenness of crumb\nSaltiness\nChewiness\nChew\nAroma\nFlavour\nGumminess\nCharring\nCrust colour',
    'dislike extremely\ndislike very much\ndislike moderately\ndislike slightly\nneither like nor dislike\nlike slightly\nlike moderately\nlike very much\nlike extremely\nLiking\nA tasting',
  ].join('\n'),
)

/** The longest text of a slip, in bytes: far above what ballots say, and a small room for what is packed with ill will. */
const mostBytes = 12_000

/** Lines of text packed into as few bytes as will do. A line break within a line becomes a space. */
export function packedLines(lines: readonly string[]): Uint8Array {
  const text = lines.map((line) => line.replace(/\s*[\r\n]+\s*/g, ' ')).join('\n')
  const bytes = new TextEncoder().encode(text)
  if (bytes.length >= mostBytes) throw new RangeError('more text than a slip holds')
  return deflateSync(bytes, { level: 9, dictionary })
}

/** The lines of packed text; null where it is none, or unpacks to more than a slip may hold. */
export function unpackedLines(packed: Uint8Array): string[] | null {
  try {
    // A full buffer is a cut text: what would unpack to more is refused, not read in part.
    const bytes = inflateSync(packed, { dictionary, out: new Uint8Array(mostBytes) })
    if (bytes.length >= mostBytes) return null
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes).split('\n')
  } catch {
    return null
  }
}
