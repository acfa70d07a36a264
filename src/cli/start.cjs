// The command line's start: bundles src/cli/main.ts when a source has changed, then runs it.
// CommonJS like the bundle, since Node starts it in fewer steps and V8 can keep its compiled code.
const { extname } = require('node:path')
const { setFlagsFromString } = require('node:v8')
const { bundleOf } = require('./bundle.cjs')
const { loadCompiled } = require('./load-compiled.cjs')

// A command lives for a quarter of a second: too short for the optimiser to earn its time back on any but the hottest loops,
// and for threads that wake up to tidy a megabyte. From Node 22 on the first flag is gone, and asking for it prints an error.
const node = Number(process.versions.node.split('.')[0])
if (node < 22) setFlagsFromString('--interrupt-budget=600000')
setFlagsFromString('--no-parallel-scavenge')

// Whoever reads the answer may stop early, as `head` does: then nobody is there to be told more.
process.stdout.on('error', (failure) => {
  if (failure.code !== 'EPIPE') throw failure
  process.exit(0)
})

/** Which code a command needs: that of its verb, for one kind of file, with a text or a JSON answer. */
const purposeOf = (words) =>
  [words[0], words.map(extname).find(Boolean), words.includes('--json') ? 'json' : 'text'].join('-')

async function start(words) {
  const bundle = await bundleOf('src/cli/main.ts')
  const { exports, keepCompiled } = loadCompiled(bundle, purposeOf(words))
  const code = await exports.main(words)
  keepCompiled()
  // Leaving at once, when all is written, spares the tidying of memory that the system takes back anyway.
  const written = code === 0 ? process.stdout : process.stderr
  written.write('', () => process.exit(code))
}

void start(process.argv.slice(2))
