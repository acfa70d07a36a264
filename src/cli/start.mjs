// The command line's start: bundles src/cli/main.ts when a source has changed, then runs it.
import { bundleOf } from './bundle.mjs'

const { main } = await import(await bundleOf('src/cli/main.ts'))
process.exitCode = await main(process.argv.slice(2))
