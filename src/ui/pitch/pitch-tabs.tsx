import { ScreenTabs } from '#ui/pitch/screen-tabs'

const tabs = { here: 'Who is here', now: 'Now', totals: 'So far', more: 'More' } as const
export type PitchTab = keyof typeof tabs

type PitchTabsProps = { readonly tab: PitchTab; readonly onTab: (tab: PitchTab) => void }

/** The four screens of a practice. */
export function PitchTabs({ tab, onTab }: PitchTabsProps) {
  return <ScreenTabs name="Screens of the practice" tabs={tabs} tab={tab} onTab={onTab} />
}
