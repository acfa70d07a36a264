// The command line's start: bundles src/cli/main.ts when a source has changed, then runs it.
// CommonJS like the bundle, since Node starts it in fewer steps and V8 can keep its compiled code.
const { bundleOf } = require('./bundle.cjs')
const { loadCompiled } = require('./load-compiled.cjs')

// Whoever reads the answer may stop early, as `head` does: then nobody is there to be told more.
process.stdout.on('error', (failure) => {
  if (failure.code !== 'EPIPE') throw failure
  process.exit(0)
})

async function start(words) {
  const { exports, keepCompiled } = loadCompiled(await bundleOf('src/cli/main.ts'), words[0])
  process.exitCode = await exports.main(words)
  keepCompiled()
}

void start(process.argv.slice(2))
