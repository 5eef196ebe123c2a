export type ButtonWeight = 'main' | 'plain'

const looks: Readonly<Record<ButtonWeight, string>> = {
  main: 'border-accent bg-accent text-white hover:opacity-90',
  plain: 'border-rule-strong bg-leaf text-ink hover:border-ink',
}

const shape =
  'tap inline-flex cursor-pointer items-center justify-center border px-4 py-2 font-medium no-underline disabled:cursor-not-allowed disabled:opacity-50'

/** How buttons look, and links that look like them. */
export function buttonLook(weight: ButtonWeight): string {
  return `${shape} ${looks[weight]}`
}
