const parentCheckMilliseconds = 500

/**
 * Listens for the wish to stop: Ctrl+C, SIGTERM, a closed terminal, or, under npm, npm's own end: ended by SIGTERM,
 * it leaves the programs it started behind.
 *
 * @returns {{ signal: AbortSignal, asked: Promise<void>, stop: () => void }} stop: ask for it from inside.
 */
export function listenForStop() {
  const controller = new AbortController()
  const stop = () => controller.abort(new DOMException('stopped', 'AbortError'))
  for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(name, stop)
  if (process.env.npm_lifecycle_event) {
    const parent = process.ppid
    setInterval(() => process.ppid !== parent && stop(), parentCheckMilliseconds).unref()
  }
  const asked = new Promise((resolve) => {
    controller.signal.addEventListener('abort', () => resolve(undefined), { once: true })
  })
  return { signal: controller.signal, asked, stop }
}
