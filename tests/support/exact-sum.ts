/** A sum of fractions of whole numbers, kept exactly. */
export class ExactSum {
  /** Numerators by denominator. */
  readonly #parts = new Map<number, number>()

  add(numerator: number, denominator: number): void {
    const sum = (this.#parts.get(denominator) ?? 0) + numerator
    if (!Number.isSafeInteger(sum) || !Number.isSafeInteger(denominator))
      throw new Error('Too large to be exact.')
    this.#parts.set(denominator, sum)
  }

  value(): Fraction {
    return [...this.#parts].reduce<Fraction>(
      (sum, [denominator, numerator]) => plus(sum, { over: BigInt(numerator), under: BigInt(denominator) }),
      { over: 0n, under: 1n },
    )
  }
}

/** `under` is above zero. */
export type Fraction = { readonly over: bigint; readonly under: bigint }

export function plus(a: Fraction, b: Fraction): Fraction {
  if (a.under === b.under) return { over: a.over + b.over, under: a.under }
  return reduce({ over: a.over * b.under + b.over * a.under, under: a.under * b.under })
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { over: -b.over, under: b.under })
}

export function times(a: Fraction, b: Fraction): Fraction {
  return reduce({ over: a.over * b.over, under: a.under * b.under })
}

/** Below zero when a < b, zero when equal. */
export function compare(a: Fraction, b: Fraction): number {
  const left = a.over * b.under
  const right = b.over * a.under
  return left < right ? -1 : left > right ? 1 : 0
}

/** A number of at most six decimals as the decimal fraction it was written as. */
export function fractionOf(value: number): Fraction {
  return { over: BigInt(Math.round(value * 1e6)), under: 1_000_000n }
}

/** To a billionth. */
export function toNumber(value: Fraction): number {
  return Number((value.over * 1_000_000_000n) / value.under) / 1e9
}

function reduce(value: Fraction): Fraction {
  let a = value.over < 0n ? -value.over : value.over
  let b = value.under
  while (b > 0n) [a, b] = [b, a % b]
  return a > 1n ? { over: value.over / a, under: value.under / a } : value
}
