const rules = new Intl.PluralRules('en-GB')

/** A number with its noun: "1 turn", "3 turns". Parts keep one decimal below ten: "2.5 turns", "12 turns". */
export function counted(count: number, one: string, many = `${one}s`): string {
  const shown = count < 10 ? Math.round(count * 10) / 10 : Math.round(count)
  return `${shown} ${rules.select(shown) === 'one' ? one : many}`
}

/** "Ann", "Ann and Bo", "Ann, Bo and Cy". */
export function listed(names: readonly string[]): string {
  return new Intl.ListFormat('en-GB', { type: 'conjunction' }).format(names)
}
