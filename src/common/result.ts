/** What could be refused: a value, or every reason why not. Refusals are data; sentences are made where they are shown. */
export type Result<Value, Reason> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly reasons: readonly Reason[] }

export function accept<Value>(value: Value): Result<Value, never> {
  return { ok: true, value }
}

export function refuse<Reason>(...reasons: readonly Reason[]): Result<never, Reason> {
  return { ok: false, reasons }
}

/** A rule of the book itself is broken: a fault of the program, never of the input. Carries the numbers. */
export class InvariantError extends Error {
  constructor(
    message: string,
    readonly numbers: Readonly<Record<string, unknown>> = {},
  ) {
    super(`${message} ${JSON.stringify(numbers)}`)
    this.name = 'InvariantError'
  }
}
