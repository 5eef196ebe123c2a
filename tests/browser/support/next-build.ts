import { createServer, request } from 'node:http'
import type { AddressInfo } from 'node:net'

/** Stands between the browser and the book, and can say of what the book serves that it is another build. */
export async function builtAnew(address: string) {
  let change: ((worker: string) => string) | null = null
  const server = createServer((asked, answer) => {
    const isWorker = asked.url === '/sw.js'
    const onward = request(
      new URL(asked.url ?? '/', address),
      // As it was asked for, but for a body that can be read.
      {
        method: asked.method,
        headers: { ...asked.headers, ...(isWorker ? { 'accept-encoding': 'identity' } : {}) },
      },
      (given) => {
        const { 'content-length': _, ...headers } = given.headers
        answer.writeHead(given.statusCode ?? 500, isWorker ? headers : given.headers)
        if (!isWorker || !change) {
          given.pipe(answer)
          return
        }
        const parts: Buffer[] = []
        given.on('data', (part: Buffer) => parts.push(part))
        given.on('end', () => answer.end(change?.(Buffer.concat(parts).toString())))
      },
    )
    onward.on('error', () => answer.destroy())
    asked.pipe(onward)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}`,
    /** From now on the worker is of this build; `spoil` changes it further. */
    serve: (build: string, spoil: (worker: string) => string = (worker) => worker) => {
      change = (worker) => spoil(worker.replace(/const build = "[^"]*"/, `const build = "${build}"`))
    },
    end: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}
