import { fileURLToPath } from 'node:url'
import { build, type Plugin } from 'vite'

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/** Where the tests in a browser find the built workers. */
const place = '/built-workers/'

/** The name of a worker as the way to it writes it, with the `new URL` around it. */
const written = /new URL\('\.\/([a-z-]+)\.ts', import\.meta\.url\)/g

/**
 * The workers of the app, built once and served from memory to the tests in a browser. Unbuilt, each worker that a
 * test opens asks for its hundreds of modules one by one, every time anew; and built is how people have them.
 */
export function builtWorkers(): Plugin {
  const names = new Set<string>()
  let files: Promise<Map<string, string>> | null = null
  return {
    name: 'built-workers',
    enforce: 'pre',
    transform: {
      filter: { id: /\/src\/app\/worker\/open-worker\.ts$/ },
      handler(code) {
        return code.replaceAll(written, (_, name: string) => {
          names.add(name)
          return `'${place}${name}.js'`
        })
      },
    },
    configureServer(server) {
      server.middlewares.use(async (request, response, next) => {
        const [path = ''] = (request.url ?? '').split('?')
        if (!path.startsWith(place)) return next()
        files ??= workerFiles([...names])
        try {
          const code = (await files).get(path.slice(place.length))
          if (code === undefined) response.statusCode = 404
          else response.setHeader('Content-Type', 'text/javascript')
          response.end(code)
        } catch (failure) {
          next(failure)
        }
      })
    },
  }
}

/** The code of every file that the workers of these names are made of, by file name. */
async function workerFiles(names: readonly string[]): Promise<Map<string, string>> {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    resolve: { alias: { '@': at('../../src') } },
    define: { __APP_VERSION__: JSON.stringify('of the tests') },
    build: {
      write: false,
      minify: false,
      rollupOptions: {
        input: Object.fromEntries(
          names.map((name) => [name, at(`../../src/app/worker/${name}.ts`)]),
        ),
        preserveEntrySignatures: false,
        output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
      },
    },
  })
  const outputs = Array.isArray(built) ? built : [built]
  const code = new Map<string, string>()
  for (const output of outputs)
    if ('output' in output)
      for (const file of output.output)
        if (file.type === 'chunk') code.set(file.fileName, file.code)
  return code
}
