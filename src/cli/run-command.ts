import type { Readable, Writable } from 'node:stream'
import { readArguments } from '#cli/arguments'
import { readInput } from '#cli/input'
import { writeOutput } from '#cli/output'
import { mustBeTwoFiles } from '#cli/two-files'
import { listVerbs, usageOf } from '#cli/usage'
import { InputError, type Verb } from '#cli/verb'
import { verbTable } from '#cli/verb-table'
import type { Problem } from '#common/problem'
import { lineOfProblem } from '#exchange/json-path'

/** What the command reads from and writes to where no file is named. */
export type Streams = { readonly input: Readable; readonly output: Writable; readonly errors: Writable }

const exitCodes = { done: 0, refused: 2, impossible: 3 } as const

/**
 * Runs the turnbook command and returns its exit code. Words are those after the command's own name.
 * Nothing is written to the output unless the verb is done, or has found out that what is asked is impossible.
 */
export async function runCommand(words: readonly string[], streams: Streams): Promise<number> {
  const [name, ...rest] = words
  const load = verbTable.get(name ?? '')
  if (!load) return answerWithoutVerb(name, streams)
  try {
    return await runVerb(await load(), rest, streams)
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    return refuse(error.problems, streams)
  }
}

async function runVerb(verb: Verb, words: readonly string[], streams: Streams): Promise<number> {
  const options = readArguments(verb, words)
  if (options.has('help')) {
    await writeOutput(`${usageOf(verb)}\n`, streams.output)
    return exitCodes.done
  }
  await mustBeTwoFiles(options)
  const outcome = await verb.run({
    options,
    say: (line) => say(line, streams),
    readInput: () => readInput(options.get('in') ?? streams.input),
  })
  if (outcome.kind === 'refused') return refuse(outcome.problems, streams)
  if (outcome.output !== null) await writeOutput(outcome.output, options.get('out') ?? streams.output)
  return exitCodes[outcome.kind]
}

async function answerWithoutVerb(name: string | undefined, streams: Streams): Promise<number> {
  const list = listVerbs(await Promise.all([...verbTable.values()].map((load) => load())))
  if (name === '--help' || name === 'help') {
    await writeOutput(`${list}\n`, streams.output)
    return exitCodes.done
  }
  say(
    name === undefined ? 'A verb is missing.' : `${JSON.stringify(name)} is not a verb of turnbook.`,
    streams,
  )
  say(list, streams)
  return exitCodes.refused
}

function refuse(problems: readonly Problem[], streams: Streams): number {
  if (problems.length > 0) say(problems.map(lineOfProblem).join('\n'), streams)
  return exitCodes.refused
}

function say(line: string, streams: Streams): void {
  streams.errors.write(`${line}\n`)
}
