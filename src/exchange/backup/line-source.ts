import { isDamaged } from '#exchange/backup/backup-fault'
import { endOfRows } from '#exchange/backup/write-backup'

const lineEnd = 10
const markAfterLine = Buffer.concat([Buffer.from('\n'), endOfRows])
/** No row is nearly as long: whatever is, is no book. */
const longestLine = 64 * 1024 * 1024

/** A stream of bytes, read by whole lines; holds little more than the piece at hand. */
export class LineSource {
  readonly #pieces: AsyncIterator<Uint8Array>
  #rest = Buffer.alloc(0)
  #hasEnded = false

  constructor(source: AsyncIterable<Uint8Array>) {
    this.#pieces = source[Symbol.asyncIterator]()
  }

  /** The next line without its end. */
  async line(): Promise<string> {
    for (;;) {
      const at = this.#rest.indexOf(lineEnd)
      if (at !== -1) return this.#take(at + 1).toString('utf8', 0, at)
      await this.#more()
    }
  }

  /** Some of the next rows, whole; null when the mark that ends them came instead, which is then passed. */
  async rows(): Promise<Buffer | null> {
    for (;;) {
      if (this.#rest.length >= endOfRows.length) {
        if (this.#rest.subarray(0, endOfRows.length).equals(endOfRows)) {
          this.#take(endOfRows.length)
          return null
        }
        const mark = this.#rest.indexOf(markAfterLine)
        if (mark !== -1) return this.#take(mark + 1)
        const last = this.#rest.lastIndexOf(lineEnd)
        if (last !== -1) return this.#take(last + 1)
      }
      await this.#more()
    }
  }

  /** @throws BackupFault when anything follows. */
  async mustEnd(): Promise<void> {
    while (!this.#hasEnded && this.#rest.length === 0) await this.#pull()
    if (this.#rest.length > 0) throw isDamaged('something follows its end')
  }

  async #more(): Promise<void> {
    if (this.#rest.length > longestLine) throw isDamaged('one of its lines is too long')
    await this.#pull()
    if (this.#hasEnded) throw isDamaged('it ends too early')
  }

  async #pull(): Promise<void> {
    const { done, value } = await this.#pieces.next()
    if (done) this.#hasEnded = true
    else this.#rest = this.#rest.length === 0 ? Buffer.from(value) : Buffer.concat([this.#rest, value])
  }

  #take(length: number): Buffer {
    const taken = this.#rest.subarray(0, length)
    this.#rest = this.#rest.subarray(length)
    return taken
  }
}
