/** What a device does at an open table; of tasters there is one login each. */
export const partNames = ['bench', 'oven', 'key', 'taster', 'watch'] as const
export type Part = (typeof partNames)[number]

/** The streams of a table, by the letter their subjects begin with: entries of the work, of the key, ballots, and notices. */
export const streams = { work: 'W', key: 'K', ballots: 'B', notices: 'N' } as const

const writes: Readonly<Record<Part, 'w' | 'k' | 'b' | null>> = {
  bench: 'w',
  oven: 'w',
  key: 'k',
  taster: 'b',
  // It looks on and says nothing.
  watch: null,
}

/** The one subject under which a login sends; null for who sends nothing. */
export function sendsUnder(part: Part, login: string): string | null {
  const letter = writes[part]
  return letter && `${letter}.${login}`
}

/** Where a login says that it is there; it is heard by the owner alone and kept nowhere. */
export const hereUnder = (login: string): string => `h.${login}`

/** The subject of one piece of what a login is sent. Each piece holds its newest state alone. */
export const noticeUnder = (login: string, piece: number): string => `n.${login}.${piece}`

/** Where a login asks for the newest state of a piece of its own. */
export const askedUnder = (login: string, piece: number): string =>
  `$JS.API.DIRECT.GET.${streams.notices}.${noticeUnder(login, piece)}`

/**
 * What a login of a part may do, everything else being refused by the server: send under its own subject, say that it is
 * there, ask for its own pieces, hear them and the answers to itself. `login` may be the server's own template for the name of whoever logs in.
 */
export function permissionsOf(part: Part, login: string) {
  const under = sendsUnder(part, login)
  return {
    pub: {
      allow: [
        ...(under === null ? [] : [under]),
        hereUnder(login),
        `$JS.API.DIRECT.GET.${streams.notices}.n.${login}.*`,
      ],
    },
    sub: { allow: [`_INBOX.${login}.>`, `n.${login}.*`] },
  }
}

/** Letters and digits that cannot be taken for one another: what a login is named with. */
const signs = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789'

/** A name for a login: eight signs by chance, 40 bits. `draw` gives whole numbers of 32 bits. */
export function newLogin(draw: () => number): string {
  return Array.from({ length: 8 }, () => signs[draw() >>> 27]).join('')
}
