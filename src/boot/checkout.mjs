import { accessSync, constants } from 'node:fs'
import { buildIsStale, buildPages } from './build.mjs'
import { clientIsStale, generateClient } from './generate.mjs'
import { installPackages, packagesAreStale } from './install.mjs'
import { takeLock } from './lock.mjs'
import { inProject, root } from './places.mjs'
import { pause } from './processes.mjs'
import { Refusal } from './refusal.mjs'
import { step } from './say.mjs'

const lockFile = inProject('.turnbook-checkout.lock')

/**
 * Makes what the checkout lacks. Two programs on one checkout take turns, so that neither pulls the packages or
 * the pages from under the other while they are being made.
 *
 * @param {readonly { isStale: () => boolean, doing: string, make: (how: { signal?: AbortSignal }) => Promise<void> }[]} parts
 * @param {{ signal?: AbortSignal }} how
 */
async function make(parts, { signal }) {
  if (!parts.some(({ isStale }) => isStale())) return
  try {
    accessSync(root, constants.W_OK)
  } catch {
    throw new Refusal(`${root} cannot be written to, and something there has to be made first.`)
  }
  const lock = await step('waiting for another start on this checkout', () => lockInTurn(signal))
  try {
    for (const { isStale, doing, make } of parts) if (isStale()) await step(doing, () => make({ signal }))
  } finally {
    lock.release()
  }
}

async function lockInTurn(signal) {
  for (;;) {
    const lock = takeLock(lockFile)
    if (lock.holder === null) return lock
    await pause(200)
    signal?.throwIfAborted()
  }
}

/** Packages and database client. @param {{ signal?: AbortSignal }} how */
export const prepareCheckout = (how) =>
  make(
    [
      { isStale: packagesAreStale, doing: 'installing the packages', make: installPackages },
      { isStale: clientIsStale, doing: 'generating the database client', make: generateClient },
    ],
    how,
  )

/** The pages. @param {{ signal?: AbortSignal }} how */
export const preparePages = (how) =>
  make([{ isStale: buildIsStale, doing: 'building the pages', make: buildPages }], how)
