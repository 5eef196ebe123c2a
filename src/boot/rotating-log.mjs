import { appendFileSync, chmodSync, existsSync, renameSync, rmSync, statSync } from 'node:fs'
import { createInterface } from 'node:readline'

const mostBytes = 5_000_000
const older = 4

/** A log that does not grow for ever: when the file is full it becomes `.1`, the one before `.2`, and the oldest goes. */
export class RotatingLog {
  #file
  #mostBytes
  #bytes

  /** @param {string} file @param {{ mostBytes?: number }} [limits] */
  constructor(file, limits = {}) {
    this.#file = file
    this.#mostBytes = limits.mostBytes ?? mostBytes
    this.#bytes = existsSync(file) ? statSync(file).size : 0
    if (existsSync(file)) chmodSync(file, 0o600)
  }

  /**
   * Writes down what a stream says, line by line.
   *
   * @param {import('node:stream').Readable} stream
   * @param {(line: string) => unknown} [onLine] hears each line too
   */
  take(stream, onLine = () => {}) {
    const lines = createInterface({ input: stream, crlfDelay: Number.POSITIVE_INFINITY })
    lines.on('line', (line) => {
      this.write(`${line}\n`)
      onLine(`${line}\n`)
    })
  }

  /** @param {string} line */
  write(line) {
    const bytes = Buffer.byteLength(line)
    try {
      if (this.#bytes > 0 && this.#bytes + bytes > this.#mostBytes) this.#turnOver()
      appendFileSync(this.#file, line, { mode: 0o600 })
      this.#bytes += bytes
    } catch {
      // A disk that is full must not end what still serves.
    }
  }

  #turnOver() {
    rmSync(`${this.#file}.${older}`, { force: true })
    for (let age = older - 1; age > 0; age--) {
      if (existsSync(`${this.#file}.${age}`)) renameSync(`${this.#file}.${age}`, `${this.#file}.${age + 1}`)
    }
    renameSync(this.#file, `${this.#file}.1`)
    this.#bytes = 0
  }
}
