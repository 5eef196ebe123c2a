const rules = new Intl.PluralRules('en-GB')

/** A number with its noun: "1 turn", "3 turns". Parts keep one decimal below ten: "2.5 turns", "12 turns". */
export function counted(count: number, one: string, many = `${one}s`): string {
  const shown = count < 10 ? Math.round(count * 10) / 10 : Math.round(count)
  return `${shown} ${rules.select(shown) === 'one' ? one : many}`
}

export { andList as listed } from '#common/and-list'
