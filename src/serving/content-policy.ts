import type { Plugin } from 'vite'

/**
 * What the built page may load: its own files and nothing from anywhere else. Styles set by charts need `unsafe-inline`. It may talk
 * to where it came from, a hub on the same port included (`'self'` there means its WebSockets too: W3C Content Security Policy
 * Level 3), and to the hubs it is built for: origins of ws or wss, with spaces between them. Throws where one of these is none.
 */
export function policyWith(hubs: string): string {
  const named = hubs.split(' ').filter((each) => each !== '')
  for (const each of named)
    if (!/^wss?:\/\/[a-z0-9.:[\]-]+$/i.test(each))
      throw new Error(`EVENHAND_HUBS: ${each} is no address of a hub, such as wss://hub.example`)
  return [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self' 'unsafe-inline'",
    "font-src 'self'",
    "img-src 'self' blob: data:",
    ["connect-src 'self'", ...named].join(' '),
    "worker-src 'self'",
    "frame-src 'self' blob:",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
}

export const policy = policyWith(process.env.EVENHAND_HUBS ?? '')

/**
 * What a server says: the policy once more, since workers follow their own answer and not the page, and besides what a page cannot
 * say of itself: nobody else frames it, no file is taken for another kind. docs/hosting.md gives the same lines to other hosts.
 */
export const headersWith = (hubs: string): Readonly<Record<string, string>> => ({
  'Content-Security-Policy': `${policyWith(hubs)}; frame-ancestors 'self'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
})

export const headers = headersWith(process.env.EVENHAND_HUBS ?? '')

/** The policy in the page itself, for hosts that say nothing, and as headers where the server is ours. */
export const contentPolicy: Plugin = {
  name: 'content-policy',
  transformIndexHtml: {
    handler: (_, { server }) =>
      server
        ? []
        : [
            {
              tag: 'meta',
              attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
              injectTo: 'head-prepend',
            },
          ],
  },
  configurePreviewServer: ({ middlewares }) => {
    middlewares.use((_, answer, next) => {
      for (const [name, value] of Object.entries(headers)) answer.setHeader(name, value)
      next()
    })
  },
}
