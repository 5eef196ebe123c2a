import { open, readdir, rename, rm } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'

/** Where a file is written until it is whole. */
export function partOf(file: string): string {
  return `${file}.${process.pid}.part`
}

/** Removes what programs that were killed left beside a file. */
export async function removeLeftParts(file: string): Promise<void> {
  const [folder, name] = [dirname(file), basename(file)]
  for (const entry of await readdir(folder)) {
    if (!entry.startsWith(`${name}.`)) continue
    const pid = /^\.(\d+)\.part$/.exec(entry.slice(name.length))?.[1]
    if (pid !== undefined && !isAlive(Number(pid))) await rm(join(folder, entry), { force: true })
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

/** Gives a whole file its name, so that it has it after a power cut too. */
export async function putInPlace(part: string, file: string): Promise<void> {
  await rename(part, file)
  const folder = await open(dirname(file), 'r')
  // Not every system keeps folders in this way; the file itself is kept.
  await folder.sync().catch(() => {})
  await folder.close()
}
