// Runs one of the project's own TypeScript scripts: node src/cli/run-script.cjs trials/make-samples.ts [arguments].
// The script exports `run(arguments)`, which may be asynchronous and may return an exit code.
const { bundleOf } = require('./bundle.cjs')

async function start([entry, ...rest]) {
  if (!entry) throw new Error('run-script needs the path of a script')
  const { run } = require(await bundleOf(entry))
  process.exitCode = (await run(rest)) ?? 0
}

void start(process.argv.slice(2))
