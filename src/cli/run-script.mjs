// Runs one of the project's own TypeScript scripts: node src/cli/run-script.mjs trials/make-samples.ts [arguments].
// The script exports `run(arguments)`, which may be asynchronous and may return an exit code.
import { bundleOf } from './bundle.mjs'

const [entry, ...rest] = process.argv.slice(2)
if (!entry) throw new Error('run-script needs the path of a script')
const { run } = await import(await bundleOf(entry))
process.exitCode = (await run(rest)) ?? 0
