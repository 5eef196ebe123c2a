import 'server-only'

/** Stands for no theme where a theme is part of a key, and a null cannot be. No theme has this id (RFC 9562, nil UUID). */
export const noThemeId = '00000000-0000-0000-0000-000000000000'
