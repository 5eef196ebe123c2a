import { PageLink } from '#ui/page/page-link'

export type ChoiceOption = { readonly label: string; readonly href: string; readonly isChosen: boolean }

/** A switch of the page made of links: it needs no script, and the address says what is shown. */
export function Choice({
  label,
  options,
}: {
  readonly label: string
  readonly options: readonly ChoiceOption[]
}) {
  return (
    <nav aria-label={label}>
      <p aria-hidden="true" className="text-sm font-medium text-soft">
        {label}
      </p>
      <ul className="mt-1 flex flex-wrap">
        {options.map((option) => (
          <li key={option.label} className="-mr-px -mb-px">
            <PageLink
              href={option.href}
              scroll={false}
              aria-current={option.isChosen ? 'true' : undefined}
              className="tap inline-flex items-center border border-rule-strong bg-leaf px-3 text-ink no-underline hover:bg-paper aria-[current]:border-accent aria-[current]:bg-accent aria-[current]:text-white"
            >
              {option.label}
            </PageLink>
          </li>
        ))}
      </ul>
    </nav>
  )
}
