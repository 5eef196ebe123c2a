import type { AheadTheme } from '#ahead/problem'
import { themeWithAbove } from '#ahead/theme-with-above'

/** Themes with a wished share, as places in the list. */
export function wishedThemes(themes: readonly Pick<AheadTheme, 'wishedShare'>[]): readonly number[] {
  return themes.flatMap(({ wishedShare }, theme) => (wishedShare > 0 ? [theme] : []))
}

/** Which of the wished themes a practice of a theme meets, as places among them. */
export function wishedThemesMet(
  themes: readonly AheadTheme[],
  { wished, theme }: { readonly wished: readonly number[]; readonly theme: number },
): readonly number[] {
  return themeWithAbove(themes, theme)
    .map((own) => wished.indexOf(own))
    .filter((place) => place >= 0)
}
