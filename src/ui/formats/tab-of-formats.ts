import type { TabName } from '#ui/paths'

/** Formats are arranged under Club; who has no such tab comes to them from the policy. */
export function tabOfFormats(tabs: readonly TabName[]): TabName {
  return tabs.includes('club') ? 'club' : 'policy'
}
