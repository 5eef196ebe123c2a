import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the project, without a slash at its end. */
export const root = resolve(fileURLToPath(new URL('../..', import.meta.url)))

/** @param {string[]} parts */
export const inProject = (...parts) => join(root, ...parts)

/** Where the club's data is kept: TURNBOOK_DATA, or .turnbook in the project. */
export function dataFolder(env = process.env) {
  return resolve(root, env.TURNBOOK_DATA || '.turnbook')
}
