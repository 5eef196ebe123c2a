const patienceMilliseconds = 1000
const repeatMilliseconds = process.stdout.isTTY ? 1000 : 10_000

const seconds = (since) => `${((Date.now() - since) / 1000).toFixed(1)} s`

// Whoever read along may have gone (a closed pipe or terminal). That is no reason to end without stopping the database.
for (const stream of [process.stdout, process.stderr]) stream.on('error', () => {})

/** @param {string} sentence */
export function say(sentence) {
  process.stdout.write(`${sentence}\n`)
}

/**
 * Runs one step. A quick one says nothing; one that takes over a second says what it does, how long it has been
 * at it, and when it is done.
 *
 * @template T
 * @param {string} doing as in "installing the packages"
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function step(doing, work) {
  const start = Date.now()
  const isTerminal = process.stdout.isTTY
  let isShown = false
  const show = () => {
    isShown = true
    if (isTerminal) process.stdout.write(`\r\u001b[K… ${doing}, ${seconds(start)}`)
    else say(`… ${doing}, ${seconds(start)}`)
  }
  let repeat
  const first = setTimeout(() => {
    show()
    repeat = setInterval(show, repeatMilliseconds)
  }, patienceMilliseconds)
  const end = (mark) => {
    clearTimeout(first)
    clearInterval(repeat)
    if (isShown) say(`${isTerminal ? '\r\u001b[K' : ''}${mark} ${doing}, ${seconds(start)}`)
  }
  try {
    const result = await work()
    end('✓')
    return result
  } catch (error) {
    end('✗')
    throw error
  }
}
