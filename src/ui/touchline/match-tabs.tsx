import { ScreenTabs } from '#ui/pitch/screen-tabs'

const tabs = { here: 'Who is here', now: 'Now', minutes: 'Minutes', more: 'More' } as const
export type MatchTab = keyof typeof tabs

type MatchTabsProps = { readonly tab: MatchTab; readonly onTab: (tab: MatchTab) => void }

/** The four screens of a match. */
export function MatchTabs({ tab, onTab }: MatchTabsProps) {
  return <ScreenTabs name="Screens of the match" tabs={tabs} tab={tab} onTab={onTab} />
}
