import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { chownSync, mkdtempSync, rmSync } from 'node:fs'
import { get } from 'node:http'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { tryPort } from '../../src/boot/ports.mjs'
import { commandLine, isAlive, pause, waitUntil } from '../../src/boot/processes.mjs'

export type Account = { readonly uid: number; readonly gid: number }

type Wish = {
  readonly data: string
  readonly env?: Readonly<Record<string, string>>
  readonly account?: Account
  /** By npm, as a person starts it. */
  readonly isByNpm?: boolean
}

/** A started Turnbook. */
export class TurnbookProcess {
  readonly #child: ChildProcess
  readonly #ended: Promise<number | null>
  #output = ''

  constructor({ data, env = {}, account, isByNpm = false }: Wish) {
    const {
      npm_lifecycle_event: _,
      DATABASE_URL: _owner,
      DATABASE_APP_URL: _app,
      PORT: _port,
      ...inherited
    } = process.env
    const command = isByNpm ? ['npm', 'start'] : [process.execPath, resolve('src/boot/start.mjs')]
    const [program = '', ...options] = command
    this.#child = spawn(program, options, {
      ...account,
      // As from a shell: a group of its own, which Ctrl+C reaches as a whole.
      detached: true,
      env: { ...inherited, NODE_ENV: 'production', TURNBOOK_DATA: data, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    for (const stream of [this.#child.stdout, this.#child.stderr]) {
      stream?.on('data', (text: Buffer) => {
        this.#output += text.toString()
      })
    }
    this.#ended = new Promise((done, fail) => {
      this.#child.once('error', fail)
      this.#child.once('close', (code) => done(code))
    })
  }

  get pid(): number {
    return this.#child.pid ?? Number.NaN
  }

  get output(): string {
    return this.#output
  }

  get address(): string {
    const address = /is ready: (http:\S+)/.exec(this.#output)?.[1]
    if (!address) throw new Error(`Not ready:\n${this.#output}`)
    return address
  }

  async untilReady(): Promise<this> {
    const ended = this.#ended.then(() => 'ended')
    while (!this.#output.includes('is ready: ')) {
      if ((await Promise.race([ended, pause(30)])) === 'ended') throw new Error(`Ended:\n${this.#output}`)
    }
    return this
  }

  /** The exit code. */
  ended(): Promise<number | null> {
    return this.#ended
  }

  async stop(signal: NodeJS.Signals = 'SIGTERM'): Promise<number | null> {
    this.#child.kill(signal)
    return this.#ended
  }

  /** For cleaning up after a test that failed: one that does not stop when asked is killed. */
  async stopSurely(): Promise<void> {
    const ended = this.stop().then(() => 'ended')
    if ((await Promise.race([ended, pause(20_000)])) !== 'ended') this.#child.kill('SIGKILL')
    await ended
  }

  /** What a terminal does on Ctrl+C: the signal goes to everything in the foreground. */
  async pressCtrlC(): Promise<number | null> {
    process.kill(-this.pid, 'SIGINT')
    return this.#ended
  }
}

/** The status that the first page answers with, or the page it leads to; 0 when nothing answers. */
export function firstPageStatus(address: string): Promise<number> {
  return new Promise((done) => {
    const request = get(address, { agent: false, timeout: 5000 }, (response) => {
      response.resume()
      const { location } = response.headers
      const next = location === undefined ? null : new URL(location, address).href
      response.once('end', () =>
        done(next && next !== address ? firstPageStatus(next) : (response.statusCode ?? 0)),
      )
      response.once('error', () => done(0))
    })
    request.once('timeout', () => request.destroy())
    request.once('error', () => done(0))
  })
}

/** The server of the database of a data folder; null when none runs. */
export async function postgresOf(data: string): Promise<number | null> {
  const { readFile } = await import('node:fs/promises')
  const note = await readFile(join(data, 'postgres/postmaster.pid'), 'utf8').catch(() => '')
  const pid = Number(note.split('\n')[0])
  return pid > 0 && isAlive(pid) && commandLine(pid).includes(data) ? pid : null
}

/** Every test's processes and folders, ended and removed after it. */
export class Playground {
  #processes: TurnbookProcess[] = []
  #folders: string[] = []

  folder(owner?: Account): string {
    const folder = mkdtempSync(join(tmpdir(), 'turnbook-boot-'))
    if (owner) chownSync(folder, owner.uid, owner.gid)
    this.#folders.push(folder)
    return folder
  }

  /** A data folder as it is after the first start, demo and all. */
  copyOf(book: string): string {
    const folder = this.folder()
    // Not by cpSync, which gives every copy to us: the cluster belongs to PostgreSQL's account.
    execFileSync('cp', ['-a', `${book}/.`, folder])
    return folder
  }

  async start(wish: Partial<Wish> = {}): Promise<TurnbookProcess> {
    const port = await tryPort(0)
    const turnbook = new TurnbookProcess({
      ...wish,
      data: wish.data ?? this.folder(wish.account),
      env: { PORT: String(port), ...wish.env },
    })
    this.#processes.push(turnbook)
    return turnbook
  }

  async clear(): Promise<void> {
    for (const turnbook of this.#processes) if (isAlive(turnbook.pid)) await turnbook.stopSurely()
    for (const folder of this.#folders) {
      const pid = await postgresOf(folder)
      if (pid) process.kill(pid, 'SIGQUIT')
      await waitUntil(async () => (await postgresOf(folder)) === null, 10_000)
      rmSync(folder, { recursive: true, force: true })
    }
    this.#processes = []
    this.#folders = []
  }
}
