// Loads a bundle with the compiled code that an earlier run left beside it, which halves the time to the first answer.
const { existsSync, readFileSync, renameSync, writeFileSync } = require('node:fs')
const { Script } = require('node:vm')

/** Where nothing can be written, the answer stands and only the next start is slower. */
const notForWriting = new Set(['EACCES', 'EPERM', 'EROFS', 'ENOSPC'])

/**
 * The exports of a CommonJS bundle in ASCII, and `keepCompiled` to be called when the work is done: it stores what V8 has
 * compiled by then, once for each `purpose` (lower case and hyphens; the rest of it is dropped), and does nothing where that
 * is stored already. V8 refuses code of another version of itself by its own check; then it is compiled and stored anew.
 */
function loadCompiled(bundle, purpose) {
  const store = `${bundle}.${purpose.replaceAll(/[^a-z-]/g, '')}.compiled`
  const stored = existsSync(store) ? readFileSync(store) : undefined
  const text = `(function (exports, require, module) {${readFileSync(bundle, 'latin1')}\n})`
  const script = new Script(text, { filename: bundle, cachedData: stored })
  const loaded = { exports: {} }
  script.runInThisContext()(loaded.exports, require, loaded)
  const keepCompiled = () => {
    if (stored && !script.cachedDataRejected) return
    try {
      writeWhole(store, script.createCachedData())
    } catch (failure) {
      if (!notForWriting.has(failure.code)) throw failure
    }
  }
  return { exports: loaded.exports, keepCompiled }
}

/** A file written aside and renamed, so that a process starting meanwhile reads it whole. */
function writeWhole(path, bytes) {
  const aside = `${path}-${process.pid}`
  writeFileSync(aside, bytes)
  renameSync(aside, path)
}

module.exports = { loadCompiled }
