const rules = new Intl.PluralRules('en-GB')

/** A number with its noun: "1 turn", "3 turns". Halves keep one decimal: "2.5 turns". */
export function counted(count: number, one: string, many = `${one}s`): string {
  const shown = Math.round(count * 10) / 10
  return `${shown} ${rules.select(shown) === 'one' ? one : many}`
}

/** "Ann", "Ann and Bo", "Ann, Bo and Cy". */
export function listed(names: readonly string[]): string {
  return new Intl.ListFormat('en-GB', { type: 'conjunction' }).format(names)
}
