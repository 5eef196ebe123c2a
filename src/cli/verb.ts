import type { Problem } from '#common/problem'

/** What a verb gets beside its own options. */
export type VerbCall = {
  /** The whole input as text, from `--in` or standard input; refuses (throws InputError) what cannot be read. */
  readonly readInput: () => Promise<string>
  /** Options given, by name without dashes; a switch is 'true'. The operand by its own name. */
  readonly options: ReadonlyMap<string, string>
  /** Says a line to the person waiting, on standard error. */
  readonly say: (line: string) => void
}

/** How a verb ended. Exit codes: done 0, refused 2, impossible 3. */
export type VerbOutcome =
  | { readonly kind: 'done'; readonly output: string | null }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'impossible'; readonly output: string }

export type VerbOption = {
  /** Without dashes. */
  readonly name: string
  /** What its value is called in the help; null for a switch. */
  readonly value: string | null
  readonly means: string
}

/** A file that is named without a dash. */
export type VerbOperand = {
  /** What it is called in the help, and in `options`. */
  readonly name: string
  readonly means: string
}

/** One thing the command can do; one file each in src/cli/verbs. What is slow to load it imports when it runs. */
export type Verb = {
  readonly name: string
  /** One line for the list of verbs. */
  readonly summary: string
  /** Shown by `--help`, below the usage line. */
  readonly help: string
  readonly options: readonly VerbOption[]
  /** What must stand after the verb; such a verb has no --in and no --out. */
  readonly operand?: VerbOperand
  readonly run: (call: VerbCall) => Promise<VerbOutcome>
}

/** Something given to the command cannot be used: the command ends with exit code 2 and these lines. */
export class InputError extends Error {
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map((problem) => `${problem.path}: ${problem.message}`).join('\n'))
    this.name = 'InputError'
  }
}
