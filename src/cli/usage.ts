import { commonOptions } from '#cli/arguments'
import type { Verb } from '#cli/verb'

/** The list of verbs, for whoever asks for none or for one that is not there. */
export function listVerbs(verbs: readonly Verb[]): string {
  const width = Math.max(...verbs.map((verb) => verb.name.length))
  const rows = verbs.map((verb) => `  ${verb.name.padEnd(width)}  ${verb.summary}`)
  return ['turnbook <verb> [--in FILE] [--out FILE]', ...rows, 'turnbook <verb> --help says more.'].join('\n')
}

/** What one verb does and takes. */
export function usageOf(verb: Verb): string {
  const options = [...verb.options, ...commonOptions(verb)].map((option) => ({
    left: option.value === null ? `--${option.name}` : `--${option.name} ${option.value}`,
    means: option.means,
  }))
  if (verb.operand) options.unshift({ left: verb.operand.name, means: verb.operand.means })
  const width = Math.max(...options.map((option) => option.left.length))
  return [
    `turnbook ${verb.name}${verb.operand ? ` ${verb.operand.name}` : ''}: ${verb.summary}`,
    verb.help,
    ...options.map((option) => `  ${option.left.padEnd(width)}  ${option.means}`),
    'Exit codes: 0 done; 1 could not be done; 2 the input is wrong, a line on standard error per problem; 3 well formed but impossible.',
  ].join('\n')
}
