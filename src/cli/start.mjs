// The command line's start: bundles src/cli/main.ts when a source has changed, then runs it.
import { bundleOf } from './bundle.mjs'

// Whoever reads the answer may stop early, as `head` does: then nobody is there to be told more.
process.stdout.on('error', (failure) => {
  if (failure.code !== 'EPIPE') throw failure
  process.exit(0)
})
const { main } = await import(await bundleOf('src/cli/main.ts'))
process.exitCode = await main(process.argv.slice(2))
