import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Viewer } from '#access/viewer'
import { servePages } from '../../src/boot/pages.mjs'
import { pagesPort } from '../../src/boot/pages-settings.mjs'
import { signedCookieOf } from '../support/signed-cookie'

export type ServedPages = {
  readonly address: string
  /** Fetches a page whole, as the viewer. */
  readonly fetchPage: (viewer: Viewer, path: string) => Promise<void>
  readonly stop: () => Promise<void>
}

/** Serves the built pages on a free port, on the database of DATABASE_APP_URL. */
export async function startPages(): Promise<ServedPages> {
  const folder = mkdtempSync(join(tmpdir(), 'turnbook-bench-'))
  const { port, host } = await pagesPort({ NODE_ENV: 'production' })
  const env = { ...process.env, NODE_ENV: 'production' as const, NODE_OPTIONS: '' }
  const pages = await servePages({ port, host, env, folder })
  const cookies = new Map<string, Promise<string>>()
  const cookieOf = (viewer: Viewer) => {
    const known =
      cookies.get(viewer.personId) ?? signedCookieOf(viewer).then(({ name, value }) => `${name}=${value}`)
    cookies.set(viewer.personId, known)
    return known
  }
  return {
    address: `http://${host}:${port}`,
    fetchPage: async (viewer, path) => {
      const cookie = await cookieOf(viewer)
      const response = await fetch(`http://${host}:${port}${path}`, {
        headers: { cookie },
        redirect: 'manual',
      })
      const html = await response.text()
      if (response.status !== 200 || !html.includes('</html>'))
        throw new Error(`${path} answered ${response.status}`)
    },
    stop: async () => {
      await pages.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
