import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the project, without a slash at its end. */
export const root = resolve(fileURLToPath(new URL('../..', import.meta.url)))

/** @param {string[]} parts */
export const inProject = (...parts) => join(root, ...parts)

/** Where the data is kept: TURNBOOK_DATA, or in the project .turnbook for the demo and .turnbook-club for a club of people. */
export function dataFolder(env = process.env) {
  return resolve(root, env.TURNBOOK_DATA || (env.TURNBOOK_DEMO === '0' ? '.turnbook-club' : '.turnbook'))
}
