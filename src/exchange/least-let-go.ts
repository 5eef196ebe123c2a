/** More than so many of one kind are let go together. */
export const mostSingly = 12

/**
 * The least that has to be let go of a request so that it works; null where none was found. Everything that can be is let
 * go, and then taken back one after another as long as the request works: what stands first, first.
 */
export function leastLetGo<Loosening>(
  all: readonly Loosening[],
  asked: {
    readonly works: (letGo: readonly Loosening[]) => boolean
    readonly hasTime: () => boolean
  },
): readonly Loosening[] | null {
  if (all.length === 0 || !asked.works(all)) return null
  let needed = all
  for (const one of all) {
    if (!asked.hasTime()) break
    const without = needed.filter((other) => other !== one)
    if (asked.works(without)) needed = without
  }
  return needed.length === 0 ? null : needed
}
