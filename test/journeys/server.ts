import { build, preview } from 'vite'
import type { TestProject } from 'vitest/node'

declare module 'vitest' {
  export interface ProvidedContext {
    baseUrl: string
  }
}

export const outDir = 'dist-journeys'

/** Builds the app as a person gets it and serves it on a free port of this machine while the journeys run. */
export default async function setup(project: TestProject) {
  const environment = process.env.NODE_ENV
  // The test runner says "test", with which the development build of React would be bundled.
  process.env.NODE_ENV = 'production'
  try {
    await build({ mode: 'production', logLevel: 'warn', build: { outDir, emptyOutDir: true } })
  } finally {
    process.env.NODE_ENV = environment
  }
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
  })
  const address = server.httpServer.address()
  if (address === null || typeof address === 'string') throw new Error('the server has no port')
  project.provide('baseUrl', `http://127.0.0.1:${address.port}/`)
  return () => server.close()
}
