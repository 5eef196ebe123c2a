import 'server-only'
import type { ClubTx } from '#data/in-club'
import type { DesignId } from '#practice/design'
import type { ThemeId } from '#themes/theme'

/** A design that serves a theme besides the one that it is about. */
export type ThemeDesign = { readonly themeId: ThemeId; readonly designId: DesignId }

/** Of the whole club. What a design itself is about is not among them. */
export async function listThemeDesigns(tx: ClubTx): Promise<readonly ThemeDesign[]> {
  return tx.db.themeDesign.findMany({
    where: { clubId: tx.clubId },
    select: { themeId: true, designId: true },
    orderBy: [{ themeId: 'asc' }, { designId: 'asc' }],
  })
}

/** Puts the designs that serve a theme in the place of those before. */
export async function saveThemeDesigns(
  tx: ClubTx,
  { themeId, designIds }: { readonly themeId: ThemeId; readonly designIds: readonly DesignId[] },
): Promise<void> {
  const { clubId } = tx
  await tx.db.themeDesign.deleteMany({ where: { clubId, themeId } })
  await tx.db.themeDesign.createMany({
    data: [...new Set(designIds)].map((designId) => ({ clubId, themeId, designId })),
  })
}
