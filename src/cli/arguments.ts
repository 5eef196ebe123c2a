import { parseArgs } from 'node:util'
import { InputError, type Verb, type VerbOption } from '#cli/verb'

const help: VerbOption = { name: 'help', value: null, means: 'show this text' }

/** Options that a verb has beside its own. */
export function commonOptions(verb: Pick<Verb, 'operand'>): readonly VerbOption[] {
  if (verb.operand) return [help]
  return [
    { name: 'in', value: 'FILE', means: 'read this file instead of standard input' },
    { name: 'out', value: 'FILE', means: 'write this file instead of standard output' },
    help,
  ]
}

/**
 * Reads what follows the verb on the command line.
 * @throws InputError for an option that is not the verb's, one without its value, one given twice, stray words, or a
 *   missing operand.
 */
export function readArguments(
  verb: Pick<Verb, 'name' | 'options' | 'operand'>,
  words: readonly string[],
): ReadonlyMap<string, string> {
  const options = [...commonOptions(verb), ...verb.options]
  const { tokens } = parseArgs({
    args: [...words],
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      options.map((option) => [option.name, { type: option.value === null ? 'boolean' : 'string' } as const]),
    ),
  })
  const given = new Map<string, string>()
  for (const token of tokens) {
    if (token.kind === 'option-terminator') continue
    if (token.kind === 'positional') {
      takeOperand(verb, token.value, given)
      continue
    }
    const option = options.find((candidate) => candidate.name === token.name)
    if (!option)
      throw misuse(token.rawName, `is not an option of ${verb.name}; ${listNames(options)} would be right`)
    if (given.has(option.name)) throw misuse(token.rawName, 'is given twice; once would be right')
    if (option.value !== null && !token.value) throw misuse(token.rawName, `needs ${option.value} after it`)
    if (option.value === null && token.value !== undefined)
      throw misuse(token.rawName, 'takes nothing after it')
    given.set(option.name, token.value ?? 'true')
  }
  if (verb.operand && !given.has(verb.operand.name) && !given.has('help'))
    throw misuse(verb.operand.name, `is missing; ${verb.operand.means} would be right`)
  return given
}

function takeOperand(
  { name, operand }: Pick<Verb, 'name' | 'operand'>,
  word: string,
  given: Map<string, string>,
): void {
  if (!operand) throw misuse(word, `is not expected; turnbook ${name} takes options only`)
  if (given.has(operand.name))
    throw misuse(word, `is not expected; turnbook ${name} takes one ${operand.name}`)
  given.set(operand.name, word)
}

function misuse(path: string, message: string): InputError {
  return new InputError([{ path, message }])
}

function listNames(options: readonly VerbOption[]): string {
  return options.map((option) => `--${option.name}`).join(', ')
}
