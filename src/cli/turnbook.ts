import { readArguments } from '#cli/arguments'
import { readInput } from '#cli/input'
import { writeOutput } from '#cli/output'
import { listVerbs, usageOf } from '#cli/usage'
import { InputError, type Verb } from '#cli/verb'
import { verbTable } from '#cli/verb-table'

const exitCodes = { done: 0, refused: 2, impossible: 3 } as const
const faultExitCode = 1

const say = (line: string) => process.stderr.write(`${line}\n`)

async function turnbook(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words
  const load = verbTable.get(name ?? '')
  if (!load) return answerWithoutVerb(name)
  const verb = await load()
  try {
    return await runVerb(verb, rest)
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    for (const problem of error.problems) say(`${problem.path}: ${problem.message}`)
    return exitCodes.refused
  }
}

async function runVerb(verb: Verb, words: readonly string[]): Promise<number> {
  const options = readArguments(verb, words)
  if (options.has('help')) {
    await writeOutput(`${usageOf(verb)}\n`, undefined)
    return exitCodes.done
  }
  const outcome = await verb.run({ options, say, readInput: () => readInput(options.get('in')) })
  if (outcome.kind === 'refused') {
    for (const problem of outcome.problems) say(`${problem.path}: ${problem.message}`)
  } else if (outcome.output !== null) {
    await writeOutput(outcome.output, options.get('out'))
  }
  return exitCodes[outcome.kind]
}

async function answerWithoutVerb(name: string | undefined): Promise<number> {
  const list = listVerbs(await Promise.all([...verbTable.values()].map((load) => load())))
  if (name === '--help' || name === 'help') {
    await writeOutput(`${list}\n`, undefined)
    return exitCodes.done
  }
  say(name === undefined ? 'A verb is missing.' : `${JSON.stringify(name)} is not a verb of turnbook.`)
  say(list)
  return exitCodes.refused
}

try {
  process.exitCode = await turnbook(process.argv.slice(2))
} catch (error) {
  say(`turnbook has a fault: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`)
  process.exitCode = faultExitCode
}
