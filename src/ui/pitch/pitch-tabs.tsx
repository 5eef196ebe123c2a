const tabs = { here: 'Who is here', now: 'Now', totals: 'So far', more: 'More' } as const
export type PitchTab = keyof typeof tabs

type PitchTabsProps = { readonly tab: PitchTab; readonly onTab: (tab: PitchTab) => void }

/** The four screens of a practice. */
export function PitchTabs({ tab, onTab }: PitchTabsProps) {
  return (
    <nav aria-label="Screens of the practice">
      <ul className="grid grid-cols-4 border-2 border-ink">
        {(Object.keys(tabs) as PitchTab[]).map((one) => (
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
