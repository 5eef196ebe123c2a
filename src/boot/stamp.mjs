import { createHash } from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { inProject, root } from './places.mjs'

/**
 * One number for the contents of files and folders: the same for the same contents, whatever the order or the dates.
 *
 * @param {readonly string[]} paths relative to the project; what is not there counts as nothing.
 * @param {{ except?: readonly string[] }} [how] folders and files to pass over
 */
export function hashOf(paths, { except = [] } = {}) {
  const passedOver = new Set(except.map((path) => inProject(path)))
  const hash = createHash('sha256')
  for (const file of paths.flatMap((path) => filesIn(inProject(path), passedOver)).sort()) {
    const content = createHash('sha256').update(readFileSync(file)).digest('hex')
    hash.update(`${relative(root, file)}\0${content}\n`)
  }
  return hash.digest('hex')
}

function filesIn(path, passedOver) {
  if (passedOver.has(path) || !existsSync(path)) return []
  if (!statSync(path).isDirectory()) return [path]
  return readdirSync(path).flatMap((name) => filesIn(join(path, name), passedOver))
}

/** @param {string} file @returns {string | null} */
export function readStamp(file) {
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : null
}

/** @param {string} file @param {string} stamp */
export function writeStamp(file, stamp) {
  mkdirSync(dirname(file), { recursive: true })
  // Put in place whole: a stamp that was cut short, or shared by a link with another copy, would tell lies.
  const draft = `${file}.${process.pid}`
  writeFileSync(draft, `${stamp}\n`)
  renameSync(draft, file)
}
