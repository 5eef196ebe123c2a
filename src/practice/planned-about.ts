import type { DesignId, PracticeDesign } from '#practice/design'
import type { ThemeId } from '#themes/theme'

/** A design serves several themes: the one that a practice is planned with is about what that practice is planned to be about. */
export function plannedAbout<Design extends Pick<PracticeDesign, 'id' | 'themeId'>>(
  designs: readonly Design[],
  { designId, themeId }: { readonly designId: DesignId | null; readonly themeId: ThemeId | null },
): readonly Design[] {
  if (designId === null || themeId === null) return designs
  return designs.map((design) => (design.id === designId ? { ...design, themeId } : design))
}
