import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'

/** What a phone keeps of one build. */
export type OfflineFiles = {
  readonly build: string
  /** Pages that open without a signal; their answers hold nothing about anybody. */
  readonly pages: readonly string[]
  readonly files: readonly string[]
}

const ownFiles = ['/manifest.webmanifest', '/icon.svg', '/icons/icon-192.png', '/icons/icon-512.png']

/** Reads what has been built in `folder` (`.next`). All its static files, since the exact solver comes late in a worker of its own. */
export async function listOfflineFiles(folder: string): Promise<OfflineFiles> {
  const build = (await readFile(join(folder, 'BUILD_ID'), 'utf8')).trim()
  const entries = await readdir(join(folder, 'static'), { recursive: true, withFileTypes: true })
  const root = join(folder, 'static')
  const built = entries
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.map'))
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll('\\', '/'))
    .sort()
  return { build, pages: ['/pitch'], files: [...built.map((path) => `/_next/static${path}`), ...ownFiles] }
}
