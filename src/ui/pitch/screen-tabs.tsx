type ScreenTabsProps<Tab extends string> = {
  readonly name: string
  readonly tabs: Readonly<Record<Tab, string>>
  readonly tab: Tab
  readonly onTab: (tab: Tab) => void
}

/** Four screens, side by side where the thumb is. */
export function ScreenTabs<Tab extends string>({ name, tabs, tab, onTab }: ScreenTabsProps<Tab>) {
  return (
    <nav aria-label={name}>
      <ul className="grid grid-cols-4 border-2 border-ink">
        {(Object.keys(tabs) as Tab[]).map((one) => (
          <li key={one} className="flex border-ink not-first:border-l-2">
            <button
              type="button"
              aria-current={one === tab ? 'page' : undefined}
              onClick={() => onTab(one)}
              className="tap w-full cursor-pointer touch-manipulation bg-leaf px-1 text-base leading-tight font-semibold aria-[current]:bg-ink aria-[current]:text-white"
            >
              {tabs[one]}
            </button>
          </li>
        ))}
      </ul>
    </nav>
  )
}
