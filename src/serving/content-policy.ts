import type { Plugin } from 'vite'

/** What the built page may load: its own files and nothing from anywhere else. Styles set by charts need `unsafe-inline`. */
export const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'self' blob:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/** What a server says besides, because a page cannot say it of itself: nobody else frames it, no file is taken for another kind. */
export const headers: Readonly<Record<string, string>> = {
  'Content-Security-Policy': `${policy}; frame-ancestors 'self'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
}

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
