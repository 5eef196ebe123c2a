import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { listOfflineFiles } from '#app/sw.js/offline-files'

/** The service worker of the pitch: what this build consists of, and the program that keeps it on the phone. */
export async function GET(): Promise<Response> {
  const folder = process.cwd()
  const { build, pages, files } = await listOfflineFiles(join(folder, '.next'))
  const body = await readFile(join(folder, 'src/app/sw.js/worker.js'), 'utf8')
  const head = Object.entries({ build, pages, files })
    .map(([name, value]) => `const ${name} = ${JSON.stringify(value)}`)
    .join('\n')
  return new Response(`${head}\n${body}`, {
    headers: { 'content-type': 'text/javascript; charset=utf-8', 'cache-control': 'no-cache' },
  })
}
