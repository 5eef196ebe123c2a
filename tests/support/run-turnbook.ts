import { Readable, Writable } from 'node:stream'
import { runCommand } from '#cli/run-command'

export type CommandResult = { readonly exitCode: number; readonly output: string; readonly errors: string }

/** Runs the turnbook command in this process: same code, its streams caught. */
export async function runTurnbook(
  words: readonly string[],
  input: string | Uint8Array = '',
): Promise<CommandResult> {
  const output = caught()
  const errors = caught()
  const exitCode = await runCommand(words, {
    input: Readable.from([Buffer.from(input)]),
    output: output.stream,
    errors: errors.stream,
  })
  return { exitCode, output: output.text(), errors: errors.text() }
}

function caught() {
  const chunks: Buffer[] = []
  const stream = new Writable({
    write(chunk, _encoding, done) {
      chunks.push(Buffer.from(chunk))
      done()
    },
  })
  return { stream, text: () => Buffer.concat(chunks).toString('utf8') }
}
